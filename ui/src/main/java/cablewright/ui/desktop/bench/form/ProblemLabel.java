// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Says under a field why what stands in it can't be; the field's own words for screen readers say it too. */
final class ProblemLabel extends Label {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final ChangeListener<String> follow;

    ProblemLabel(String id, Node field, String name, ReadOnlyStringProperty problem) {
        setId(id + "-problem");
        setWrapText(true);
        setMinHeight(Region.USE_PREF_SIZE);
        getStyleClass().add("problem");
        follow = (o, before, now) -> show(field, name, now);
        problem.addListener(follow);
        show(field, name, problem.get());
    }

    private void show(Node field, String name, String problem) {
        setText(problem);
        setVisible(!problem.isEmpty());
        setManaged(!problem.isEmpty());
        field.pseudoClassStateChanged(WRONG, !problem.isEmpty());
        field.setAccessibleText(problem.isEmpty() ? name : name + ": " + problem);
    }
}
