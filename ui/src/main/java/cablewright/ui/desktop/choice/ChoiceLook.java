// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.choice;

import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Tooltip;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/**
 * How the values of a box to choose from look.
 *
 * @param words names a value
 * @param group names the group of a value; empty for none. Values of a group must follow each other
 * @param symbol makes the symbol beside a value; empty for none
 * @param <T> the values
 */
public record ChoiceLook<T>(
        Function<T, String> words, Function<T, Optional<String>> group, Function<T, Optional<Node>> symbol) {

    private static final double NANO = 1e-9;

    /**
     * Names alone.
     *
     * @param words names a value
     * @return a look without groups and symbols
     * @param <T> the values
     */
    public static <T> ChoiceLook<T> of(Function<T, String> words) {
        return new ChoiceLook<>(words, value -> Optional.empty(), value -> Optional.empty());
    }

    /**
     * Gives a box this look, finds its values by what is typed, and says the whole of its value in a tooltip.
     *
     * @param box the box
     */
    public void on(ComboBox<T> box) {
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : words.apply(value);
            }

            @Override
            public T fromString(String written) {
                throw new UnsupportedOperationException("values are chosen and not typed");
            }
        });
        box.setCellFactory(list -> new Cell(box));
        Tooltip whole = new Tooltip();
        whole.textProperty().bind(box.valueProperty().map(words).orElse(box.getAccessibleText()));
        box.setTooltip(whole);
        TypeAhead ahead = new TypeAhead();
        box.addEventHandler(KeyEvent.KEY_TYPED, event -> {
            String letter = event.getCharacter();
            if (letter.isBlank() || letter.chars().anyMatch(Character::isISOControl) || event.isShortcutDown()) {
                return;
            }
            ahead.type(
                            letter,
                            System.nanoTime() * NANO,
                            box.getItems().stream().map(words).toList(),
                            box.getSelectionModel().getSelectedIndex())
                    .ifPresent(index -> {
                        box.getSelectionModel().select(index);
                        scrollTo(box, index);
                    });
        });
    }

    private static void scrollTo(ComboBox<?> box, int index) {
        if (box.isShowing()
                && box.getSkin() instanceof ComboBoxListViewSkin<?> skin
                && skin.getPopupContent() instanceof ListView<?> list) {
            list.scrollTo(Math.max(0, index - 2));
        }
    }

    /** A value, under the name of its group where the group begins. */
    private final class Cell extends ListCell<T> {
        private final ComboBox<T> box;

        Cell(ComboBox<T> box) {
            this.box = box;
        }

        @Override
        protected void updateItem(T value, boolean isEmpty) {
            super.updateItem(value, isEmpty);
            if (isEmpty || value == null) {
                setText(null);
                setGraphic(null);
                return;
            }
            setText(words.apply(value));
            Optional<String> head = headOf(value);
            Optional<Node> drawn = symbol.apply(value);
            if (head.isEmpty() && drawn.isEmpty()) {
                setGraphic(null);
                return;
            }
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            Label name = new Label(getText());
            HBox row = new HBox(name);
            row.getStyleClass().add("choice-row");
            drawn.ifPresent(it -> row.getChildren().add(0, it));
            VBox whole = new VBox(row);
            head.ifPresent(it -> {
                Label title = new Label(it);
                title.getStyleClass().add("choice-group");
                title.setMinWidth(Region.USE_PREF_SIZE);
                whole.getChildren().add(0, title);
            });
            setGraphic(whole);
        }

        private Optional<String> headOf(T value) {
            int index = box.getItems().indexOf(value);
            Optional<String> mine = group.apply(value);
            boolean begins =
                    index <= 0 || !group.apply(box.getItems().get(index - 1)).equals(mine);
            return begins ? mine : Optional.empty();
        }
    }
}
