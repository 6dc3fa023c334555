// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.bench.edit.RecordEdits;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Nature;
import cablewright.ui.desktop.bench.exercise.AskedViewModel.Asked;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What the exercise asks for: each event with its verdict, what a perfect reader hands in, and how hard it is. */
final class AskedSection extends VBox {

    private final ExerciseEditorViewModel model;
    private final AskedViewModel asked;
    private final ObservableValue<LengthUnit> unit;
    private final Texts texts;
    private final VBox found = new VBox();
    private final Label working = label("asked-working", "quiet");
    private final Label problem = label("asked-problem", "problem");

    AskedSection(ExerciseEditorViewModel model, AskedViewModel asked, ObservableValue<LengthUnit> unit) {
        this.model = model;
        this.asked = asked;
        this.unit = unit;
        this.texts = model.texts();
        getStyleClass().add("section-fields");
        found.getStyleClass().add("item-rows");
        working.setText(texts.say("asked.working"));
        working.visibleProperty().bind(asked.workingProperty());
        working.managedProperty().bind(asked.workingProperty());
        problem.textProperty().bind(asked.problemProperty());
        problem.managedProperty().bind(asked.problemProperty().isNotEmpty());
        getChildren().addAll(working, problem, found);
        asked.askedProperty().addListener((o, before, now) -> show());
        unit.addListener((o, before, now) -> show());
    }

    private static Label label(String id, String styleClass) {
        Label label = new Label();
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(styleClass);
        return label;
    }

    private static Label textLabel(String id, String text) {
        Label label = label(id, "asked-line");
        label.setText(text);
        return label;
    }

    private void show() {
        asked.askedProperty().get().ifPresent(this::show);
    }

    private void show(Asked now) {
        Exercise exercise = now.demand().exercise();
        AskedWords words = new AskedWords(texts, Words.in(unit.getValue(), texts.locale()), exercise);
        List<Node> rows = new ArrayList<>();
        rows.add(textLabel("asked-difficulty", words.difficulty(now.features())));
        Label source = textLabel("asked-difficulty-source", texts.say("difficulty.source"));
        source.getStyleClass().add("quiet");
        rows.add(source);
        rows.add(textLabel("asked-marks", words.marks(now.demand().demanded().size())));
        now.demand().events().forEach(event -> rows.add(row(event, exercise, words)));
        Label perfect = textLabel("asked-perfect-title", texts.say("asked.perfect"));
        perfect.getStyleClass().add("field-name");
        rows.add(perfect);
        for (Flag flag : now.perfect().flags()) {
            rows.add(textLabel("asked-flag-" + flag.letter(), words.flag(flag)));
        }
        found.getChildren().setAll(rows);
    }

    private Node row(LineEvent event, Exercise exercise, AskedWords words) {
        String id = event.eventId().orElse("~end");
        Label title = textLabel("asked-title-" + id, words.title(event));
        title.getStyleClass().add("finding-title");
        VBox row = new VBox(
                title,
                textLabel("asked-counts-" + id, words.counts(event)),
                textLabel("asked-standing-" + id, words.standing(event)));
        row.getStyleClass().add("item-row");
        boolean lacks = event.kind().nature() == Nature.HARDWARE
                && event.truth() == Verdict.DAMAGE
                && event.on(exercise.cable()).isPresent();
        if (lacks) {
            Button draw = new Button(texts.say("asked.draw"));
            draw.setId("asked-draw-" + id);
            draw.setAccessibleText(texts.say("record.draw.name", id));
            draw.setOnAction(press -> draw(id));
            row.getChildren().add(draw);
        }
        return row;
    }

    private void draw(String eventId) {
        model.document()
                .step(
                        texts.say("record.step.draw"),
                        now -> now.withRecord(record -> RecordEdits.drawn(record, now.cable(), eventId, now.texts())));
    }
}
