// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.exercise;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.Refusals;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Edits of the exercise on the Bench, each by the name under which it is undone. */
final class ExerciseEditorViewModel {

    private final DocumentViewModel document;
    private final Texts texts;
    private final Refusals refusals;

    ExerciseEditorViewModel(DocumentViewModel document, Texts texts) {
        this.document = document;
        this.texts = texts;
        this.refusals = new Refusals(texts);
    }

    DocumentViewModel document() {
        return document;
    }

    Texts texts() {
        return texts;
    }

    Exercise exercise() {
        return document.now().exercise();
    }

    private static UnaryOperator<BenchDocument> inDocument(UnaryOperator<Exercise> edit) {
        return now -> now.with(edit.apply(now.exercise()));
    }

    /** Does a step by itself; the name is what is done. */
    Optional<String> step(String name, UnaryOperator<Exercise> edit) {
        return document.step(name, inDocument(edit)).map(refusals::tell);
    }

    /** Does a part of what is typed in one visit to a field. */
    Optional<String> type(String name, String field, UnaryOperator<Exercise> edit) {
        return document.move(name, "exercise/" + field, inDocument(edit)).map(refusals::tell);
    }
}
