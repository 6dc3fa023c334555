// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.bench.BenchDocument;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.Region;

/** Something of the document that is or is not. */
public final class SwitchField extends CheckBox {

    private final ChangeListener<BenchDocument> follow;
    private boolean showing;

    /**
     * Makes a switch.
     *
     * @param id name of the node
     * @param name what it says
     * @param document the document
     * @param shown whether it is
     * @param take puts into the document whether it is to be
     */
    public SwitchField(
            String id,
            String name,
            DocumentViewModel document,
            Predicate<BenchDocument> shown,
            Consumer<Boolean> take) {
        super(name);
        setId(id);
        setAccessibleText(name);
        setWrapText(true);
        setMinHeight(Region.USE_PREF_SIZE);
        follow = (o, before, now) -> show(shown.test(now));
        show(shown.test(document.now()));
        selectedProperty().addListener((o, before, now) -> {
            if (!showing) {
                take.accept(now);
                show(shown.test(document.now()));
            }
        });
        document.documentProperty().addListener(new WeakChangeListener<>(follow));
    }

    private void show(boolean on) {
        showing = true;
        setSelected(on);
        showing = false;
    }
}
