// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.text.Texts;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.Quantities;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.ObservableList;
import javafx.collections.transformation.SortedList;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** Attempts, one a row. */
final class AttemptTable extends TableView<AttemptRecord> {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final double SECONDS_PER_MINUTE = 60;

    private final Texts texts;

    AttemptTable(ObservableList<AttemptRecord> records, Texts texts) {
        this.texts = texts;
        setId("attempts");
        getStyleClass().add("attempts");
        setAccessibleText(texts.say("classbook.attempts"));
        Label none = new Label(texts.say("classbook.none"));
        none.setWrapText(true);
        none.getStyleClass().addAll("quiet", "placeholder-words");
        setPlaceholder(none);
        setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        column(
                "when",
                125,
                AttemptRecord::committedAt,
                instant -> WHEN.format(instant.atZone(ZoneId.systemDefault())),
                false);
        column("trainee", 95, AttemptRecord::trainee, name -> name, false);
        column("exercise", 140, this::exercise, name -> name, false);
        column("marks", 70, AttemptRecord::fraction, null, true);
        column("digs", 55, AttemptRecord::needlessDigs, String::valueOf, true);
        column("missed", 62, AttemptRecord::damageMissed, String::valueOf, true);
        column("time", 58, record -> record.secondsTaken().orElse(-1), AttemptTable::time, true);
        SortedList<AttemptRecord> sorted = new SortedList<>(records);
        sorted.comparatorProperty().bind(comparatorProperty());
        setItems(sorted);
    }

    private String exercise(AttemptRecord record) {
        return record.made()
                .map(request -> texts.say("classbook.made", Quantities.number(request.difficulty(), 2)))
                .orElseGet(() -> record.exerciseTitle().orElse(record.exerciseId()));
    }

    private <T extends Comparable<T>> void column(
            String key, double width, Function<AttemptRecord, T> value, Function<T, String> text, boolean number) {
        TableColumn<AttemptRecord, T> column = new TableColumn<>(texts.say("classbook.column." + key));
        column.setId("column-" + key);
        column.setPrefWidth(width);
        column.setComparator(Comparator.naturalOrder());
        column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(value.apply(cell.getValue())));
        column.setCellFactory(made -> new TableCell<>() {
            @Override
            protected void updateItem(T item, boolean empty) {
                super.updateItem(item, empty);
                AttemptRecord record =
                        empty || getTableRow() == null ? null : getTableRow().getItem();
                setText(empty || item == null ? "" : text != null ? text.apply(item) : marks(record));
            }
        });
        if (number) {
            column.getStyleClass().add("number-column");
        }
        getColumns().add(column);
    }

    private static String marks(AttemptRecord record) {
        return record == null ? "" : FindingWords.marks(record.marks()) + " / " + FindingWords.marks(record.maximum());
    }

    private static String time(double seconds) {
        return seconds < 0 ? "" : time(OptionalDouble.of(seconds));
    }

    /** Minutes and seconds, such as 1:05; nothing where no time was taken. */
    static String time(OptionalDouble seconds) {
        if (seconds.isEmpty()) {
            return "–";
        }
        long whole = Math.round(seconds.getAsDouble());
        long minutes = (long) (whole / SECONDS_PER_MINUTE);
        String rest = Quantities.number(whole - minutes * SECONDS_PER_MINUTE, 0);
        return minutes + ":" + (rest.length() < 2 ? "0" : "") + rest;
    }
}
