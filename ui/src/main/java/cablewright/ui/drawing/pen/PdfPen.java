// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/** Draws on the pages of a PDF, with its font inside. The same drawing gives the same bytes: no clock, no chance. */
final class PdfPen implements Pen {

    private final PDDocument document = new PDDocument();
    private final double width;
    private final double height;
    private final PDType0Font font;
    private PDPageContentStream page;
    private double opacity = 1;

    PdfPen(double width, double height, String title) {
        this.width = width;
        this.height = height;
        document.setDocumentId(0L);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCustomMetadataValue(COSName.CREATOR.getName(), "Cablewright");
        try (InputStream in = GlyphFont.open()) {
            font = PDType0Font.load(document, in);
        } catch (IOException e) {
            throw new UncheckedIOException("the page of a PDF can't be made", e);
        }
        addPage();
    }

    /** Goes on to another page of the same size. */
    void nextPage() {
        draw(page::close);
        addPage();
    }

    private void addPage() {
        opacity = 1;
        PDPage sheet = new PDPage(new PDRectangle((float) width, (float) height));
        document.addPage(sheet);
        draw(() -> {
            page = new PDPageContentStream(document, sheet);
            page.setLineJoinStyle(1);
        });
    }

    /** A step of drawing that may fail for reasons of writing. */
    private interface Step {
        void run() throws IOException;
    }

    private void draw(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException("the page of a PDF can't be drawn", e);
        }
    }

    @Override
    public void fill(double x, double y, double width, double tall, Colour colour) {
        draw(() -> {
            page.setNonStrokingColor(opaque(colour));
            transparency(colour);
            page.addRect((float) x, (float) (height - y - tall), (float) width, (float) tall);
            page.fill();
        });
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, Colour colour) {
        draw(() -> {
            page.setStrokingColor(opaque(colour));
            transparency(colour);
            page.setLineWidth((float) thickness);
            page.setLineDashPattern(dash > 0 ? new float[] {(float) dash} : new float[0], 0);
            addPath(xs, ys);
            page.stroke();
        });
    }

    @Override
    public void shape(double[] xs, double[] ys, Colour colour) {
        draw(() -> {
            page.setNonStrokingColor(opaque(colour));
            transparency(colour);
            addPath(xs, ys);
            page.closePath();
            page.fill();
        });
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, Colour colour) {
        draw(() -> {
            String known = knownToFont(text);
            double start = x - font.getStringWidth(known) / 1000 * size * anchor.share();
            page.beginText();
            page.setNonStrokingColor(opaque(colour));
            transparency(colour);
            page.setFont(font, (float) size);
            page.newLineAtOffset((float) start, (float) (height - y));
            page.showText(known);
            page.endText();
        });
    }

    /** The font knows Latin, Greek and Cyrillic; a letter it does not have becomes a question mark. */
    private String knownToFont(String text) {
        StringBuilder known = new StringBuilder();
        text.codePoints().forEach(c -> {
            String letter = Character.toString(c);
            try {
                font.encode(letter);
                known.append(letter);
            } catch (IOException | IllegalArgumentException e) {
                known.append('?');
            }
        });
        return known.toString();
    }

    private void addPath(double[] xs, double[] ys) throws IOException {
        page.moveTo((float) xs[0], (float) (height - ys[0]));
        for (int i = 1; i < xs.length; i++) {
            page.lineTo((float) xs[i], (float) (height - ys[i]));
        }
    }

    @Override
    public double width(String text, double size) {
        try {
            return font.getStringWidth(knownToFont(text)) / 1000 * size;
        } catch (IOException e) {
            throw new UncheckedIOException("a text of a PDF can't be measured", e);
        }
    }

    @Override
    public void within(Box box, Runnable drawing) {
        double before = opacity;
        draw(() -> {
            page.saveGraphicsState();
            page.addRect((float) box.x(), (float) (height - box.bottom()), (float) box.width(), (float) box.height());
            page.clip();
        });
        drawing.run();
        opacity = before;
        draw(page::restoreGraphicsState);
    }

    /** Goes on with another opacity where the last thing had one of its own. */
    private void transparency(Colour colour) throws IOException {
        if (colour.opacity() != opacity) {
            opacity = colour.opacity();
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setNonStrokingAlphaConstant((float) opacity);
            state.setStrokingAlphaConstant((float) opacity);
            page.setGraphicsStateParameters(state);
        }
    }

    private static PDColor opaque(Colour colour) {
        int rgb = colour.rgb();
        float[] parts = {(rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f};
        return new PDColor(parts, PDDeviceRGB.INSTANCE);
    }

    byte[] bytes() throws IOException {
        page.close();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        document.close();
        return out.toByteArray();
    }
}
