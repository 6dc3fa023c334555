// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.function.Consumer;

/** The three tracks as one picture: a trace as it was taken, what the drawing says, and what is there. */
public final class TracksPicture {

    private static final String BUNDLE = "cablewright.ui.print.print";
    private static final double EDGE = 14;

    private final Exercise exercise;
    private final Trace trace;
    private final LineEnd end;
    private final Words words;
    private final Texts texts;

    /**
     * Makes a picture.
     *
     * @param exercise the exercise, with its cable and its record
     * @param trace a trace of its cable
     * @param end the end from which it was taken
     * @param words the words, in the unit of length in which the picture is to be read
     */
    public TracksPicture(Exercise exercise, Trace trace, LineEnd end, Words words) {
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
        PageFlow flow = new PageFlow(PaperSize.A4);
        Settings settings = trace.settings();
        PrintedTracks plate = new PrintedTracks(flow, words, settings.rangeMetres());
        plate.trace(trace, List.of(), TraceCaption.of(trace, end, texts, words));
        plate.record(exercise.record(), end, texts.say("record.caption"));
        CableDrawing drawing = CableDrawing.of(
                exercise.cable(),
                end,
                settings.velocityFraction(),
                settings.stimulus().topHertz());
        plate.cable(
                drawing,
                drawing.marks().stream()
                        .map(mark -> words.kind(mark.event().kind()))
                        .toList(),
                drawing.marks().stream()
                        .map(mark -> mark.event().kind().nature() == Nature.DAMAGE)
                        .toList(),
                texts.say("cable.caption"));
        double top = flow.top() - EDGE;
        double height = flow.used() - top + EDGE;
        double width = PaperSize.A4.width();
        Consumer<Pen> tracks = pen -> {
            pen.fill(0, 0, width, height, 0xFFFFFF);
            ShiftedPen shifted = new ShiftedPen(pen, top);
            flow.drawings().forEach(one -> one.accept(shifted));
        };
        return format.draw(width, height, exercise.cable().title(), tracks);
    }
}
