// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The tracks as a picture are read back in each format. */
class TracksPictureTest {

    private static TracksPicture picture(LengthUnit unit) {
        Exercise exercise = BenchTemplate.STREET_OF_TAPS
                .document(Locale.ROOT)
                .withCable(cable -> Insertable.PINCH.putOn(cable, 121, 1))
                .exercise();
        SimulatedPort port =
                new SimulatedPort(exercise.cable(), exercise.instrument().sourceOhms(), new PropagationCache());
        Trace trace = new Reflectometer(exercise.instrument())
                .measure(port, exercise.start().settings(), exercise.noiseSeed());
        return new TracksPicture(exercise, trace, LineEnd.NEAR, Words.in(unit, Locale.ROOT));
    }

    @Test
    void pdfSaysWhatTheTracksShow() throws IOException {
        try (PDDocument document = Loader.loadPDF(picture(LengthUnit.METRES).draw(PictureFormat.PDF))) {
            assertEquals(1, document.getNumberOfPages());
            String text = new PDFTextStripper().getText(document);
            for (String wanted : new String[] {"from the near end", "drawing", "cable", "pinch", "end: terminated"}) {
                assertTrue(text.contains(wanted), wanted + " is not in " + text);
            }
        }
    }

    @Test
    void svgIsInFeetWhereFeetAreRead() {
        String svg = new String(picture(LengthUnit.FEET).draw(PictureFormat.SVG), StandardCharsets.UTF_8);
        assertTrue(svg.startsWith("<?xml") || svg.startsWith("<svg"), svg.substring(0, 40));
        assertTrue(svg.contains("\u00a0ft"));
        assertTrue(svg.contains("Net Loft Street"));
    }

    @Test
    void pngIsAsWideAsThePaperAndTheSameEachTime() throws IOException {
        byte[] png = picture(LengthUnit.METRES).draw(PictureFormat.PNG);
        assertArrayEquals(png, picture(LengthUnit.METRES).draw(PictureFormat.PNG));
        assertEquals(
                2 * PaperSize.A4.width(),
                ImageIO.read(new ByteArrayInputStream(png)).getWidth(),
                2);
    }
}
