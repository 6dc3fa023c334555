// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.figure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.demonstration.Curve;
import cablewright.ui.drawing.axis.Axis;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.palette.Tone;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.drawing.pen.RecordingPen;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {

    private static final Axis ACROSS = Axis.linear("distance, m", 0, 10);
    private static final Axis UP = Axis.linear("reflection, %", -2, 2);

    private static Figure figure(Panel panel) {
        return new Figure("A figure", List.of(Figure.Row.of(1, panel)), "What it says.", "How it was made.");
    }

    private static Panel.Plot plot(double... heights) {
        double[] x = new double[heights.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = 20.0 * i / (x.length - 1) - 5;
        }
        return new Panel.Plot(
                "A plot", ACROSS, UP, List.of(new Panel.Line("line, dashed", new Curve(x, heights), Tone.MAIN, true)));
    }

    @Test
    void logarithmicAxisHasItsMarksAtRoundNumbers() {
        List<String> marks = Axis.logarithmic("t, ns", 2, 50).ticks(10).stream()
                .map(Axis.Tick::text)
                .toList();
        assertEquals(List.of("2", "5", "10", "20", "50"), marks);
        assertEquals(0.5, Axis.logarithmic("f", 1, 100).share(10), 1e-12);
        assertEquals(10, Axis.logarithmic("f", 1, 100).valueAt(0.5), 1e-12);
    }

    @Test
    void axisThatDoesNotRiseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Axis.linear("x", 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Axis.logarithmic("x", 0, 1));
    }

    @Test
    void curveIsDrawnFromEdgeToEdgeOfItsAxesAndNoFurther() {
        RecordingPen pen = new RecordingPen();
        Box sheet = new Box(0, 0, 400, 300);
        Figure figure = figure(plot(-5, 1, 0, 1, 5));
        new FigureDrawing(pen, Palette.LIGHT, 10).draw(figure, sheet);
        Box box = new FigureLayout(figure, sheet, 10).placed().get(0).plot();
        RecordingPen.Line longest = pen.lines().stream()
                .max(Comparator.comparingInt(line -> line.xs().length))
                .orElseThrow();
        double[] xs = longest.xs();
        assertEquals(box.x(), xs[0], 0.5);
        assertEquals(box.right(), xs[xs.length - 1], 0.5);
        for (double y : longest.ys()) {
            assertTrue(y >= box.y() - 1e-9 && y <= box.bottom() + 1e-9, "y = " + y);
        }
        List<String> texts = pen.texts().stream().map(RecordingPen.Text::text).toList();
        assertTrue(texts.containsAll(List.of("A plot", "distance, m", "reflection, %", "line, dashed")));
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("−2")));
    }

    @Test
    void dataTellsEveryPointWithWhatItsAxesMeasure() {
        String csv = FigureData.csv(figure(plot(0, 1, 2)));
        assertEquals(
                """
                # A figure
                # What it says.
                # How it was made.
                # panel 1: A plot; x: distance, m; y: reflection, %
                panel,series,x,y,value
                1,"line, dashed",-5.0,0.0,
                1,"line, dashed",5.0,1.0,
                1,"line, dashed",15.0,2.0,
                """,
                csv);
    }

    @Test
    void sheetIsTheSameBytesEachTimeAndCarriesItsCaption() {
        FigureSheet sheet = new FigureSheet(figure(plot(0, 1, 2)));
        for (PictureFormat format : PictureFormat.values()) {
            assertArrayEquals(sheet.bytes(format), sheet.bytes(format), format + " differs");
        }
        String svg = new String(sheet.bytes(PictureFormat.SVG), StandardCharsets.UTF_8);
        assertTrue(svg.contains(">What it says.<") && svg.contains(">How it was made.<"));
    }
}
