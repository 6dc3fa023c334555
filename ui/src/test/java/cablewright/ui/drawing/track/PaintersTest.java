// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.palette.Ink;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.RecordingPen;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the painters of the tracks draw, whatever draws it. */
class PaintersTest {

    private static final Words WORDS = Words.in(LengthUnit.METRES, Locale.ROOT);
    private static final Exercise EXERCISE = BenchTemplate.STREET_OF_TAPS
            .document(java.util.Locale.ROOT)
            .withCable(cable -> Insertable.PINCH.putOn(cable, 121, 1))
            .exercise();

    private static final Set<Insertable> ON_PAIRS = EnumSet.of(
            Insertable.ONE_SIDE_OPEN,
            Insertable.ONE_SIDE_EARTHED,
            Insertable.CROSS,
            Insertable.SPREAD_PAIR,
            Insertable.SPLIT);

    private final RecordingPen pen = new RecordingPen();

    private TrackSheet sheet(double width, double height, double font) {
        DistanceView shown = new DistanceView(-3, 250, 0, 1);
        return new TrackSheet(pen, Palette.LIGHT, new Box(0, 0, width, height), shown, LengthUnit.METRES, font);
    }

    private static CableDrawing drawing(Exercise exercise) {
        return CableDrawing.of(
                exercise.cable(),
                LineEnd.NEAR,
                exercise.start().settings().velocityFraction(),
                exercise.start().settings().stimulus().topHertz());
    }

    /** Labels that share a line do not touch, on a wide screen, at projector scale and on paper. */
    @ParameterizedTest
    @ValueSource(doubles = {9.1, 13, 19.5})
    void labelsOfTheTracksNeverCollide(double font) {
        CablePainter.Labels labels = CablePainter.Labels.of(event -> WORDS.kind(event.kind()));
        new CablePainter(sheet(700, CablePainter.HEIGHT * font / 13, font), WORDS)
                .draw(drawing(EXERCISE), labels, "cable");
        assertApart(pen.texts());
        pen.texts().clear();
        new RecordPainter(sheet(700, RecordPainter.HEIGHT * font / 13, font))
                .draw(RecordClaims.of(EXERCISE.record(), LineEnd.NEAR, WORDS), Optional.empty(), "drawing");
        assertApart(pen.texts());
    }

    private static void assertApart(List<RecordingPen.Text> texts) {
        assertFalse(texts.isEmpty());
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                RecordingPen.Text a = texts.get(i);
                RecordingPen.Text b = texts.get(j);
                boolean sameLine = Math.abs(a.y() - b.y()) < 0.7 * a.size();
                boolean touch = a.left() < b.left() + b.width() && b.left() < a.left() + a.width();
                assertFalse(sameLine && touch, a + " and " + b);
            }
        }
    }

    /** Every kind of event that can be put on a cable leaves its mark on the drawing. */
    @ParameterizedTest
    @EnumSource(Insertable.class)
    void everyKindOfEventHasASymbol(Insertable kind) {
        BenchTemplate template = ON_PAIRS.contains(kind) ? BenchTemplate.LOADED_LOOP : BenchTemplate.PLAIN_CABLE;
        Exercise with = template.document(java.util.Locale.ROOT)
                .withCable(cable -> kind.putOn(cable.withEvents(List.of()), 40, 1))
                .exercise();
        CableDrawing cable = drawing(with);
        assertEquals(1, cable.marks().size());
        TrackSheet sheet = sheet(900, 200, 13);
        CableDrawing.Mark mark = cable.marks().get(0);
        double from = sheet.pixel(mark.shownFromMetres());
        EventSymbols.draw(sheet, mark.event(), from, sheet.pixel(mark.shownToMetres()), new Body(84, 108));
        assertTrue(pen.lines().size() + pen.filled().size() > 0, kind.name());
    }

    @Test
    void aCurveThatLeavesThePlotHasABarAtItsEdge() {
        TrackSheet sheet = sheet(700, 300, 13);
        Box plot = TracePainter.plotOf(sheet.area(), 1);
        double[] heights = {0, 0.3, 0, -0.05, 0};
        ReducedCurve curve =
                ReducedCurve.of(5, i -> sheet.left() + 100 * i, i -> heights[i], sheet.left(), sheet.right(), 1);
        TracePainter painter = new TracePainter(sheet, new PercentScale(0, 0.1, plot.y(), plot.height()));
        painter.drawClipping(curve, Double.POSITIVE_INFINITY);
        assertEquals(1, pen.lines().size(), "the peak of 30 % leaves a plot of 10 %, the dip of 5 % does not");
        assertEquals(Palette.LIGHT.of(Ink.CLIP), pen.lines().get(0).colour());
        assertEquals(sheet.left() + 100, pen.lines().get(0).xs()[0], 1e-9);
    }
}
