// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A field of one line with its name above and, when what stands in it can't be, the reason beneath. */
public final class TypedField extends VBox {

    private final Typing model;
    private final TextField field = new TextField();
    private final Label unit = new Label();
    private final ProblemLabel problem;

    /**
     * Makes a field.
     *
     * @param id name of the node
     * @param name what is typed there
     * @param model what it shows and takes
     */
    public TypedField(String id, String name, Typing model) {
        this.model = model;
        getStyleClass().add("field");
        Label label = new Label(name);
        label.getStyleClass().add("field-name");
        label.setLabelFor(field);
        label.setWrapText(true);
        field.setId(id);
        field.textProperty().bindBidirectional(model.textProperty());
        HBox.setHgrow(field, Priority.ALWAYS);
        HBox row = new HBox(field, unit);
        row.getStyleClass().add("field-row");
        row.setAlignment(Pos.CENTER_LEFT);
        unit.getStyleClass().add("quiet");
        unit.setMinWidth(Region.USE_PREF_SIZE);
        unit.setManaged(false);
        problem = new ProblemLabel(id, field, name, model.problemProperty());
        getChildren().addAll(label, row, problem);
        EditKeys.on(field, model);
    }

    /**
     * Makes the field as wide as a number needs.
     *
     * @param columns how many letters
     * @return this field
     */
    public TypedField narrow(int columns) {
        field.setPrefColumnCount(columns);
        field.setMaxWidth(Region.USE_PREF_SIZE);
        return this;
    }

    /**
     * Shows a unit behind the field.
     *
     * @param symbol the unit's symbol
     * @return this field
     */
    public TypedField unit(String symbol) {
        unit.setText(symbol);
        unit.setManaged(!symbol.isEmpty());
        return this;
    }

    /**
     * Shows what an empty field means.
     *
     * @param words such as "usual"
     * @return this field
     */
    public TypedField whenEmpty(String words) {
        field.setPromptText(words);
        return this;
    }

    /**
     * Leaves the name to screen readers, where the row around the field says what it is.
     *
     * @return this field
     */
    public TypedField unnamed() {
        getChildren().remove(0);
        return this;
    }

    /**
     * Gives away the sentence that says why something can't be, to stand where there is more room.
     *
     * @return the label
     */
    public Label problem() {
        getChildren().remove(problem);
        return problem;
    }

    /** Puts the focus here. */
    public void start() {
        field.requestFocus();
    }

    public Typing model() {
        return model;
    }
}
