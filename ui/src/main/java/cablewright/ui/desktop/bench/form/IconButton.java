// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** A small button with a sign; its words are in its tool tip and for screen readers. */
public final class IconButton extends Button {

    /**
     * Makes a button.
     *
     * @param id name of the node
     * @param icon its sign
     * @param name what it does
     * @param action does it
     */
    public IconButton(String id, Feather icon, String name, Runnable action) {
        super("", new FontIcon(icon));
        setId(id);
        getStyleClass().addAll("flat", "small-button");
        setAccessibleText(name);
        setTooltip(new Tooltip(name));
        setOnAction(event -> action.run());
    }
}
