// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.CablePainter;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** The tracks as one picture: a trace as it was taken, what the drawing says, and, where it may be seen, what is there. */
public final class TracksPicture {

    private static final String BUNDLE = "cablewright.ui.print.print";
    private static final double EDGE = 14;
    private static final double WIDTH = PaperSize.A4.width();

    private final Exercise exercise;
    private final Trace trace;
    private final LineEnd end;
    private final Words words;
    private final Texts texts;
    private final boolean showsCable;

    /**
     * Makes a picture of all three tracks.
     *
     * @param exercise the exercise, with its cable and its record
     * @param trace a trace of its cable
     * @param end the end from which it was taken
     * @param words the words, in the unit of length in which the picture is to be read
     */
    public TracksPicture(Exercise exercise, Trace trace, LineEnd end, Words words) {
        this(exercise, trace, end, words, true);
    }

    /**
     * Makes a picture of what a trainee sees before the cable is shown.
     *
     * @param exercise the exercise, with its record
     * @param trace a trace of its cable
     * @param end the end from which it was taken
     * @param words the words, in the unit of length in which the picture is to be read
     * @return a picture of trace and record
     */
    public static TracksPicture withoutCable(Exercise exercise, Trace trace, LineEnd end, Words words) {
        return new TracksPicture(exercise, trace, end, words, false);
    }

    private TracksPicture(Exercise exercise, Trace trace, LineEnd end, Words words, boolean showsCable) {
        this.showsCable = showsCable;
        this.exercise = exercise;
        this.trace = trace;
        this.end = end;
        this.words = words;
        this.texts = words.texts().sibling(BUNDLE);
    }

    /**
     * Draws it.
     *
     * @param format PNG, SVG or PDF
     * @return the picture's file; the same tracks give the same bytes
     */
    public byte[] draw(PictureFormat format) {
        List<Consumer<Pen>> drawings = new ArrayList<>();
        double[] height = {EDGE};
        Settings settings = trace.settings();
        PrintedTracks tracks = new PrintedTracks(
                (tall, drawing) -> {
                    Box box = new Box(EDGE, height[0], WIDTH - 2 * EDGE, tall);
                    drawings.add(pen -> drawing.draw(pen, box));
                    height[0] += tall;
                },
                words,
                settings.rangeMetres());
        tracks.trace(trace, List.of(), TraceCaption.of(trace, end, texts, words));
        tracks.record(exercise.record(), end, texts.say("record.caption"));
        if (showsCable) {
            cable(tracks, settings);
        }
        return format.draw(
                WIDTH, height[0] + EDGE, showsCable ? exercise.cable().title() : exercise.title(), pen -> {
                    pen.fill(0, 0, WIDTH, height[0] + EDGE, Palette.LIGHT.of(Ink.PAPER));
                    drawings.forEach(one -> one.accept(pen));
                });
    }

    private void cable(PrintedTracks tracks, Settings settings) {
        CableDrawing drawing = CableDrawing.of(
                exercise.cable(),
                end,
                settings.velocityFraction(),
                settings.stimulus().topHertz());
        tracks.cable(drawing, CablePainter.Labels.of(event -> words.kind(event.kind())), texts.say("cable.caption"));
    }
}
