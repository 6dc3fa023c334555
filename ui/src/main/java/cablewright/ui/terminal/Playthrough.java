// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.Marker;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.drawing.track.TracePicture;
import java.time.Instant;
import java.util.OptionalDouble;

/** An exercise that plays itself: its brief, its trace, a sample answer with its marks, and the cable. */
public final class Playthrough {

    private final Round round;
    private final RoundView view;

    /**
     * Makes it ready.
     *
     * @param exercise the exercise
     * @param screen how things are shown
     */
    public Playthrough(Exercise exercise, PracticeTerminal.Screen screen) {
        this.round = new Round(exercise, Instant.EPOCH);
        this.view = new RoundView(screen);
    }

    /**
     * Tells the exercise and draws its trace.
     *
     * @return text to print
     */
    public String question() {
        return new ExercisePage(view).brief(round.exercise(), "") + view.tracks(round) + "\n";
    }

    /**
     * Draws the trace as a picture.
     *
     * @return a PNG file
     */
    public byte[] picture() {
        RoundScreen screen = view.screen(round);
        return new TracePicture(screen.plot(screen.wholeWindow()), view.words()).draw(PictureFormat.PNG);
    }

    /**
     * Sets a sample answer's flags, has them marked, and shows the cable.
     *
     * @return text to print
     */
    public String answer() {
        Marker marker = new Marker();
        Attempt sample = KeyedAnswer.of(marker.demand(round.exercise()));
        sample.predictedChoiceId().ifPresent(choice -> round.predict(choice, sample.predictedReasonId()));
        for (Flag flag : sample.flags()) {
            round.joinTo(flag.end());
            round.set(round.settings().withVelocityFraction(flag.velocityFraction()));
            round.add(new Instruction.SetFlag(
                    rounded(flag.startMetres()), rounded(flag.endMetres()), flag.kind(), flag.verdict()));
        }
        round.joinTo(round.exercise().start().end());
        String flags = view.screen(round).flagList();
        round.commit(marker, "sample", Instant.EPOCH);
        return "A sample answer:\n" + flags + "\n" + view.result(round);
    }

    /** As a person would read it: to a tenth of a metre. */
    private static double rounded(double metres) {
        return Math.rint(metres * 10) / 10;
    }

    private static OptionalDouble rounded(OptionalDouble metres) {
        return metres.isPresent() ? OptionalDouble.of(rounded(metres.getAsDouble())) : metres;
    }
}
