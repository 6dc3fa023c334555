// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.generation.ExplanationDraft;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.solve.PropagationCache;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/** Drafts the explanation of an exercise from the physics, for the instructor to edit. */
public final class ExplanationDrafts {

    private ExplanationDrafts() {}

    /**
     * Drafts an explanation: how each event shows at what is set when the exercise opens.
     *
     * @param exercise the exercise
     * @param memory what is remembered of lines
     * @param language the language
     * @param cancelled asked before each event; once true the rest is left out
     * @return Markdown
     */
    public static String of(Exercise exercise, PropagationCache memory, Locale language, BooleanSupplier cancelled) {
        List<EventVisibility> sights = VisibilityAnalysis.of(
                exercise.cable(),
                exercise.instrument(),
                exercise.start().settings(),
                exercise.start().end(),
                memory,
                cancelled);
        return new ExplanationDraft(language).of(exercise.cable(), sights);
    }
}
