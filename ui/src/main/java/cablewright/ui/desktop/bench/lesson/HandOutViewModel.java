// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.lesson;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.proof.ExerciseProof;
import cablewright.lessons.proof.TextCheck;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.ProofWords;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What is to be put right before a lesson is handed out: what its exercises ask for, and what they say. */
final class HandOutViewModel {

    private final DocumentViewModel document;
    private final Texts texts;
    private final Words words;
    private final LatestRun runs;
    private final ReadOnlyObjectWrapper<Optional<List<String>>> found = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();

    HandOutViewModel(DocumentViewModel document, Threads threads, Texts texts) {
        this.document = document;
        this.texts = texts;
        this.words = Words.in(LengthUnit.METRES, texts.locale());
        this.runs = new LatestRun(threads);
        document.documentProperty().addListener((o, before, now) -> {
            if (!before.lesson().equals(now.lesson())) {
                found.set(Optional.empty());
            }
        });
    }

    /** Examines the lesson as it is now. */
    void look() {
        Lesson lesson = document.now().lesson();
        working.set(true);
        runs.ask(
                () -> examine(lesson),
                sentences -> {
                    working.set(false);
                    found.set(Optional.of(sentences));
                },
                problem -> {
                    working.set(false);
                    found.set(Optional.of(List.of(texts.say("handout.failed", String.valueOf(problem.getMessage())))));
                });
    }

    private List<String> examine(Lesson lesson) {
        Marker marker = new Marker();
        List<String> sentences = new ArrayList<>();
        if (lesson.introduction().isBlank()) {
            sentences.add(texts.say("handout.introduction"));
        }
        for (Exercise exercise : lesson.exercises()) {
            ExerciseProof proof = ExerciseProof.of(exercise, marker);
            proof.problems().stream()
                    .map(problem -> new ProofWords(words).problem(exercise, problem))
                    .forEach(said -> sentences.add(texts.say("handout.in", exercise.title(), said)));
            TextCheck.of(exercise, proof.maximumMarks()).stream()
                    .map(this::said)
                    .forEach(said -> sentences.add(texts.say("handout.in", exercise.title(), said)));
        }
        return List.copyOf(sentences);
    }

    private String said(TextCheck.Remark remark) {
        return switch (remark.kind()) {
            case BLANK -> texts.say("handout.blank", remark.where());
            case UNFINISHED -> texts.say("handout.unfinished", remark.where());
            case OUT_OF_REACH -> texts.say("handout.outOfReach", remark.where());
            case CAUTION_MISSING -> texts.say("handout.caution", words.cautionInShort(Caution.valueOf(remark.where())));
        };
    }

    /** What was found: nothing until somebody asks, and again once the lesson changes. */
    ReadOnlyObjectProperty<Optional<List<String>>> foundProperty() {
        return found.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }
}
