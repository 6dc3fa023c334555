// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;

/** What was taken for what: a row for each true kind, a column for each flagged one and one for what was missed. */
final class ConfusionGrid extends GridPane {

    private static final double UPWARD_DEGREES = -90;

    private final Texts texts;
    private final Words words;

    ConfusionGrid(Texts texts, Words words) {
        this.texts = texts;
        this.words = words;
        setId("taken-for");
        getStyleClass().add("confusion-grid");
    }

    void show(ClassSummary summary) {
        getChildren().clear();
        Set<EventKind> rows = EnumSet.noneOf(EventKind.class);
        Set<EventKind> columns = EnumSet.noneOf(EventKind.class);
        rows.addAll(summary.byKind().keySet());
        summary.takenFor().values().forEach(taken -> columns.addAll(taken.keySet()));
        if (rows.isEmpty()) {
            Label none = new Label(texts.say("classbook.nothingYet"));
            none.getStyleClass().add("quiet");
            none.setWrapText(true);
            add(none, 0, 0);
            return;
        }
        List<EventKind> across = new ArrayList<>(columns);
        heads(across);
        int row = 1;
        for (EventKind truth : rows) {
            fill(row++, truth, across, summary);
        }
    }

    private void heads(List<EventKind> across) {
        int column = 1;
        for (EventKind kind : across) {
            add(head(words.kind(kind)), column++, 0);
        }
        add(head(texts.say("classbook.missed")), column, 0);
    }

    /** Written upward, so that narrow columns can have long names. */
    private static Group head(String text) {
        Label head = new Label(text);
        head.getStyleClass().addAll("quiet", "grid-head");
        head.setRotate(UPWARD_DEGREES);
        Group upright = new Group(head);
        GridPane.setHalignment(upright, HPos.CENTER);
        GridPane.setValignment(upright, VPos.BOTTOM);
        return upright;
    }

    private void fill(int row, EventKind truth, List<EventKind> across, ClassSummary summary) {
        Map<EventKind, Integer> taken = summary.takenFor().getOrDefault(truth, Map.of());
        int missed = summary.missed().getOrDefault(truth, 0);
        int all = missed + taken.values().stream().mapToInt(Integer::intValue).sum();
        Label name = new Label(words.kind(truth));
        name.setMinWidth(Region.USE_PREF_SIZE);
        add(name, 0, row);
        int column = 1;
        for (EventKind flagged : across) {
            int times = taken.getOrDefault(flagged, 0);
            String said = texts.say("classbook.takenFor", words.kind(truth), words.kind(flagged), times);
            add(cell(times, all, flagged == truth, said), column++, row);
        }
        add(cell(missed, all, false, texts.say("classbook.wasMissed", words.kind(truth), missed)), column, row);
    }

    /** A number on a ground that is the stronger the more often it happened; right answers have a ground of their own. */
    private static Label cell(int times, int all, boolean right, String said) {
        Label cell = new Label(times == 0 ? "·" : String.valueOf(times));
        int step = all == 0 ? 0 : (int) Math.ceil(4.0 * times / all);
        cell.getStyleClass().addAll("grid-cell", right ? "grid-right" : "grid-wrong", "grid-step-" + step);
        cell.setAlignment(Pos.CENTER);
        cell.setMaxWidth(Double.MAX_VALUE);
        cell.setAccessibleText(said);
        return cell;
    }
}
