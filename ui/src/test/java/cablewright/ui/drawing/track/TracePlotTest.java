// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.drawing.track.TracePlot.Window;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

class TracePlotTest {

    private static final int TRACE = 0x0072B2;
    private static final int DAMAGE = 0xB84F00;

    private static TracePlot plot(String title) {
        double[] x = new double[1000];
        double[] y = new double[1000];
        for (int i = 0; i < x.length; i++) {
            x[i] = i / 10.0;
            y[i] = 5 * Math.sin(i / 50.0);
        }
        return new TracePlot(
                title,
                "5 ns, 75 \u03a9, \u22122 %",
                LengthUnit.METRES,
                x,
                y,
                new Window(0, 100, -6, 6),
                List.of(new FlagMarker("A", 50, OptionalDouble.empty(), FlagMarker.Look.DAMAGE, false)));
    }

    private static byte[] picture(TracePlot plot, PictureFormat format) {
        return new TracePicture(plot, Words.in(LengthUnit.METRES, Locale.ROOT)).draw(format);
    }

    @ParameterizedTest
    @EnumSource(PictureFormat.class)
    void theSamePlotGivesTheSameBytes(PictureFormat format) {
        assertArrayEquals(picture(plot("Quay camera 3"), format), picture(plot("Quay camera 3"), format));
    }

    @Test
    void thePngShowsTraceAndFlagInTheirColours() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture(plot("Quay"), PictureFormat.PNG)));
        assertTrue(count(image, TRACE) > 1000, "trace");
        assertTrue(count(image, DAMAGE) > 300, "flag");
    }

    @Test
    void thePdfDrawsWhatThePngDraws() throws IOException {
        BufferedImage png = ImageIO.read(new ByteArrayInputStream(picture(plot("Quay"), PictureFormat.PNG)));
        try (var document = Loader.loadPDF(picture(plot("Quay"), PictureFormat.PDF))) {
            BufferedImage pdf = new PDFRenderer(document).renderImageWithDPI(0, 144);
            assertEquals(png.getWidth(), pdf.getWidth());
            assertEquals(count(png, TRACE), count(pdf, TRACE), 0.5 * count(png, TRACE));
        }
    }

    private static int count(BufferedImage image, int colour) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                int off = Math.abs((rgb >> 16 & 255) - (colour >> 16 & 255))
                        + Math.abs((rgb >> 8 & 255) - (colour >> 8 & 255))
                        + Math.abs((rgb & 255) - (colour & 255));
                count += off < 60 ? 1 : 0;
            }
        }
        return count;
    }

    @ParameterizedTest
    @EnumSource(PictureFormat.class)
    void anyTitleCanBeDrawn(PictureFormat format) throws IOException, SAXException, ParserConfigurationException {
        byte[] bytes = picture(plot("<Pier & \"mole\">\u0007 \u6d77 \ud83d\ude80"), format);
        assertTrue(bytes.length > 1000);
        if (format == PictureFormat.SVG) {
            Document svg =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
            assertTrue(
                    svg.getElementsByTagName("title").item(0).getTextContent().startsWith("<Pier & \"mole\">"));
        }
    }
}
