// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import javafx.scene.Node;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** Fields that belong together, under a heading that shuts them away. */
public final class Section extends TitledPane {

    private final VBox fields = new VBox();

    /**
     * Makes a section.
     *
     * @param id name of the node
     * @param title its heading
     * @param open whether it is open at first
     * @param content what it holds
     */
    public Section(String id, String title, boolean open, Node... content) {
        super(title, null);
        setId(id);
        getStyleClass().add("section");
        setAccessibleText(title);
        fields.getStyleClass().add("section-fields");
        fields.getChildren().addAll(content);
        setContent(fields);
        setExpanded(open);
        setAnimated(false);
    }
}
