// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.proof.ExerciseProof;
import cablewright.lessons.proof.ExerciseProof.Problem;
import cablewright.lessons.proof.LessonNumbers.StatedNumber;
import cablewright.simulator.paths.Reflector;

/** Says whether an exercise is fit to set. */
public final class ProofWords {

    private final Words words;

    /**
     * Makes the words.
     *
     * @param words the words of everything
     */
    public ProofWords(Words words) {
        this.words = words;
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    /**
     * Reports on an exercise.
     *
     * @param exercise the exercise
     * @param proof what was found
     * @return a line for the exercise, each event and each problem
     */
    public String report(Exercise exercise, ExerciseProof proof) {
        VisibilityWords sights = new VisibilityWords(words, exercise.cable());
        StringBuilder out = new StringBuilder();
        out.append(say(
                        "proof.reader",
                        exercise.id(),
                        Quantities.significant(proof.marks()),
                        Quantities.significant(proof.maximumMarks())))
                .append('\n');
        for (LineEvent event : proof.events()) {
            out.append("  ").append(event(sights, event)).append('\n');
        }
        for (Problem problem : proof.problems()) {
            out.append("  ")
                    .append(say("proof.problem", problem(sights, problem)))
                    .append('\n');
        }
        return out.toString();
    }

    /**
     * Says what is to be put right.
     *
     * @param exercise the exercise
     * @param problem what was found in it
     * @return a sentence that begins in the middle of a line
     */
    public String problem(Exercise exercise, Problem problem) {
        return problem(new VisibilityWords(words, exercise.cable()), problem);
    }

    private String problem(VisibilityWords sights, Problem problem) {
        String subject = problem.subject().isEmpty() ? "" : sights.name(Reflector.event(problem.subject()));
        return say("proof." + Words.word(problem.kind()), subject);
    }

    private String event(VisibilityWords sights, LineEvent event) {
        String best = say(
                "proof.best",
                sights.name(event.reflector()),
                words.verdict(event.truth()),
                words.stimulus(event.best().settings().stimulus()),
                words.end(event.best().end()),
                sights.unsigned(event.best().contrastVolts()),
                sights.unsigned(event.best().noiseVolts()));
        return sights.whyNotClear(event)
                .map(reason -> say("proof.notAsked", best, reason))
                .orElse(best);
    }

    /**
     * Says that a number in a text is wrong.
     *
     * @param number the number
     * @return one line
     */
    public String wrong(StatedNumber number) {
        String stated = Quantities.number(number.mark().value(), number.mark().digits()) + " "
                + number.mark().unit();
        String source = number.mark().source().orElse("");
        return number.problem().isEmpty()
                ? say("proof.number", number.place(), stated, source, number.corrected())
                : say("proof.noNumber", number.place(), stated, source, number.problem());
    }
}
