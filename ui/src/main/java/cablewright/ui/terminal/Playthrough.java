package cablewright.ui.terminal;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.Marker;
import cablewright.ui.chart.CableDrawing;
import cablewright.ui.picture.PictureFormat;
import cablewright.ui.words.Words;
import java.time.Instant;
import java.util.OptionalDouble;

/** An exercise that plays itself: its brief, its trace, a sample answer with its marks, and the cable. */
public final class Playthrough {

    private final Round round;
    private final Words words;
    private final Practice.Screen screen;
    private final RoundScreen tracks;

    /**
     * Makes it ready.
     *
     * @param exercise the exercise
     * @param screen how things are shown
     */
    public Playthrough(Exercise exercise, Practice.Screen screen) {
        this.round = new Round(exercise, Instant.EPOCH);
        this.screen = screen;
        this.words = Words.in(screen.unit());
        this.tracks = new RoundScreen(round, words, screen.style(), screen.columns(), screen.lines());
    }

    /**
     * Tells the exercise and draws its trace.
     *
     * @return text to print
     */
    public String question() {
        Prose prose = new Prose(screen.columns() - 1);
        StringBuilder out = new StringBuilder(round.exercise().title() + "\n\n");
        out.append(prose.ofMarkdown(round.exercise().brief()));
        round.exercise().cautions().forEach(caution -> out.append(prose.wrapped(words.caution(caution), "  ! ")));
        return out.append('\n')
                .append(tracks.tracks(tracks.wholeWindow()))
                .append('\n')
                .toString();
    }

    /**
     * Draws the trace as a picture.
     *
     * @return a PNG file
     */
    public byte[] picture() {
        return PictureFormat.PNG.draw(tracks.plot(tracks.wholeWindow()));
    }

    /**
     * Sets a sample answer's flags, has them marked, and shows the cable.
     *
     * @return text to print
     */
    public String answer() {
        Marker marker = new Marker();
        Attempt sample = KeyedAnswer.of(marker.demand(round.exercise()));
        sample.predictedChoiceId().ifPresent(round::predict);
        for (Flag flag : sample.flags()) {
            round.joinTo(flag.end());
            round.set(round.settings().withVelocityFraction(flag.velocityFraction()));
            round.add(new Instruction.SetFlag(
                    rounded(flag.startMetres()), rounded(flag.endMetres()), flag.kind(), flag.verdict()));
        }
        round.joinTo(round.exercise().start().end());
        StringBuilder out = new StringBuilder("A sample answer:\n" + tracks.flagList() + "\n");
        round.commit(marker, "sample", Instant.EPOCH);
        ResultScreen result = new ResultScreen(round.exercise(), words, screen.style(), screen.columns() - 1);
        double top = 1 / round.settings().stimulus().shortestEdgeSeconds();
        CableDrawing drawing = CableDrawing.of(
                round.exercise().cable(), round.end(), round.settings().velocityFraction(), top);
        out.append(tracks.tracks(tracks.wholeWindow())).append('\n');
        return out.append(result.marks(round.sheet().orElseThrow()))
                .append('\n')
                .append(result.cable(round.end(), drawing))
                .toString();
    }

    /** As a person would read it: to a tenth of a metre. */
    private static double rounded(double metres) {
        return Math.rint(metres * 10) / 10;
    }

    private static OptionalDouble rounded(OptionalDouble metres) {
        return metres.isPresent() ? OptionalDouble.of(rounded(metres.getAsDouble())) : metres;
    }
}
