// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.drawing.text.TextTrack.Mark;
import cablewright.ui.drawing.track.FlagMarker;
import cablewright.ui.drawing.track.TracePlot;
import cablewright.ui.drawing.track.TracePlot.Window;
import cablewright.ui.words.LengthUnit;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TextPlotTest {

    private static final TerminalStyle UNICODE = new TerminalStyle(true, false);
    private static final Window WINDOW = new Window(0, 100, -10, 10);

    /** A flat line with one sample that stands out. */
    private static TracePlot spike(int count, int at, double height) {
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = 100.0 * i / (count - 1);
        }
        y[at] = height;
        return new TracePlot(
                "spike",
                "",
                LengthUnit.METRES,
                x,
                y,
                WINDOW,
                List.of(new FlagMarker("A", 50, OptionalDouble.empty(), FlagMarker.Look.DAMAGE, false)));
    }

    /** What the topmost line of the plot shows of the curve. */
    private static String topmost(String text, boolean unicode) {
        String line = text.lines().skip(1).findFirst().orElseThrow();
        return line.substring(line.indexOf(unicode ? '│' : '|') + 1).strip();
    }

    @Property(tries = 200)
    void noSpikeIsLostHoweverManySamplesFallOnOneCharacter(
            @ForAll @IntRange(min = 2, max = 19_997) int at,
            @ForAll @IntRange(min = 40, max = 200) int width,
            @ForAll boolean unicode) {
        TextPlot plot = new TextPlot(width, 20, new TerminalStyle(unicode, false));
        assertEquals("", topmost(plot.draw(spike(20_000, at, 0)), unicode));
        String shown = topmost(plot.draw(spike(20_000, at, 9.9)), unicode);
        assertTrue(shown.length() == 1 || shown.length() == 2, "the spike shows as \"" + shown + "\"");
    }

    @Property(tries = 100)
    void linesKeepToTheWidthAndHeight(
            @ForAll @IntRange(min = 1, max = 300) int width, @ForAll @IntRange(min = 1, max = 80) int height) {
        String text = new TextPlot(width, height, UNICODE).draw(spike(500, 100, 5));
        assertEquals(Math.max(6, height), text.lines().count());
        text.lines().forEach(line -> assertTrue(line.length() <= Math.max(30, width), line));
    }

    @Test
    void withoutUnicodeAllIsAscii() {
        String text = new TextPlot(80, 20, TerminalStyle.ASCII).draw(spike(500, 100, -5));
        assertTrue(text.chars().allMatch(c -> c < 128), text);
    }

    @Test
    void aFlagAndAMarkBelowItStandInTheSameColumn() {
        String text = new TextPlot(90, 20, UNICODE).draw(spike(500, 100, 5));
        String track = new TextTrack(90, UNICODE).draw("drawing", WINDOW, 0, 100, List.of(new Mark(50, 50, '1')));
        assertEquals(text.lines().findFirst().orElseThrow().indexOf('A'), track.indexOf('1'));
    }

    @Test
    void colourIsSentOnlyWhereItIsAllowed() {
        assertTrue(new TextPlot(80, 20, new TerminalStyle(true, true))
                .draw(spike(50, 10, 5))
                .contains("\u001b[36m"));
        assertFalse(new TextPlot(80, 20, UNICODE).draw(spike(50, 10, 5)).contains("\u001b"));
    }
}
