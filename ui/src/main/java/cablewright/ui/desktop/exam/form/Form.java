// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.form;

import cablewright.lessons.text.Texts;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A card with a title, words, and rows of a name and a control. Keys of texts begin with the card's name. */
public final class Form extends VBox {

    /** Bundle of the sentences of these pages. */
    public static final String BUNDLE = "cablewright.ui.desktop.exam.exam";

    private final String name;
    private final Texts texts;
    private GridPane grid = new GridPane();

    /**
     * Makes an empty card.
     *
     * @param name name of the card; {@code <name>.title} is its title
     * @param texts sentences of {@link #BUNDLE}
     */
    public Form(String name, Texts texts) {
        this.name = name;
        this.texts = texts;
        getStyleClass().addAll("card", "exam-form");
        Label title = new Label(texts.say(name + ".title"));
        title.getStyleClass().add("card-title");
        getChildren().add(title);
    }

    /**
     * Adds quiet words.
     *
     * @param key key of the words
     * @return this card
     */
    public Form words(String key) {
        Label words = new Label(texts.say(name + "." + key));
        words.getStyleClass().add("quiet");
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        return add(words);
    }

    /**
     * Adds a node over the whole width.
     *
     * @param node the node
     * @return this card
     */
    public Form add(Node node) {
        getChildren().add(node);
        grid = new GridPane();
        return this;
    }

    /**
     * Adds a row.
     *
     * @param key key of its name
     * @param control what stands beside the name
     * @return this card
     */
    public Form row(String key, Node control) {
        if (!getChildren().contains(grid)) {
            grid.getStyleClass().add("exam-grid");
            ColumnConstraints names = new ColumnConstraints();
            names.setMinWidth(Region.USE_PREF_SIZE);
            ColumnConstraints controls = new ColumnConstraints();
            controls.setHgrow(Priority.ALWAYS);
            grid.getColumnConstraints().setAll(names, controls);
            getChildren().add(grid);
        }
        Label label = new Label(texts.say(name + "." + key));
        label.setLabelFor(control);
        GridPane.setValignment(label, VPos.CENTER);
        control.setAccessibleText(texts.say(name + "." + key));
        grid.addRow(grid.getRowCount(), label, control);
        return this;
    }

    /**
     * Adds a row with a field for text.
     *
     * @param key key of its name
     * @param id id of the field
     * @param value what is typed
     * @return this card
     */
    public Form field(String key, String id, StringProperty value) {
        return row(key, bound(new TextField(), id, value));
    }

    /**
     * Adds a row with a field whose text is not shown.
     *
     * @param key key of its name
     * @param id id of the field
     * @param value what is typed
     * @return this card
     */
    public Form secret(String key, String id, StringProperty value) {
        return row(key, bound(new PasswordField(), id, value));
    }

    private static TextField bound(TextField field, String id, StringProperty value) {
        field.setId(id);
        field.textProperty().bindBidirectional(value);
        return field;
    }

    /**
     * Adds a row with a field for the name of a file, and a button that asks the system for one.
     *
     * @param key key of its name
     * @param id id of the field
     * @param value the name
     * @param kind what is asked for
     * @return this card
     */
    public Form file(String key, String id, StringProperty value, FileWish kind) {
        TextField field = bound(new TextField(), id, value);
        field.setAccessibleText(texts.say(name + "." + key));
        HBox.setHgrow(field, Priority.ALWAYS);
        Button choose = new Button(texts.say("choose"));
        choose.setMinWidth(Region.USE_PREF_SIZE);
        choose.setAccessibleText(texts.say("choose.name", texts.say(name + "." + key)));
        choose.setOnAction(event -> kind.ask(getScene().getWindow(), texts.say(name + "." + key), value.get())
                .ifPresent(path -> value.set(path.toString())));
        HBox pair = new HBox(field, choose);
        pair.setAlignment(Pos.CENTER_LEFT);
        pair.getStyleClass().add("exam-pair");
        return row(key, pair);
    }

    /**
     * Adds a row of buttons.
     *
     * @param buttons the buttons
     * @return this card
     */
    public Form buttons(Node... buttons) {
        FlowPane row = new FlowPane(buttons);
        row.getStyleClass().add("exam-buttons");
        return add(row);
    }

    /**
     * Makes a button.
     *
     * @param key key of its text
     * @param id its id
     * @param action what it does
     * @return the button
     */
    public Button button(String key, String id, Runnable action) {
        Button button = new Button(texts.say(name + "." + key));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setAccessibleText(texts.say(name + "." + key));
        button.setOnAction(event -> action.run());
        return button;
    }

    /**
     * Lets Enter in any field of this card press a button.
     *
     * @param button the button
     * @return this card
     */
    public Form enter(Button button) {
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER && event.getTarget() instanceof TextField && !button.isDisabled()) {
                event.consume();
                button.fire();
            }
        });
        return this;
    }

    /**
     * Adds what there is to say: nothing, news or a fault.
     *
     * @param id id of the label
     * @param said what is said
     * @return this card
     */
    public Form message(String id, ObservableValue<Said> said) {
        return add(new SaidLabel(id, said));
    }
}
