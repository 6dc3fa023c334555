// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.pen;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Writes Scalable Vector Graphics 1.1 (W3C Recommendation, 2011); texts stay texts. */
final class SvgPen implements Pen {

    private final StringBuilder out = new StringBuilder();

    SvgPen(double width, double height, String title) {
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$spt\" height=\"%2$spt\" viewBox=\"0 0 %1$s %2$s\" "
                        + "font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\">\n",
                number(width),
                number(height)));
        out.append("<title>").append(escaped(title)).append("</title>\n");
    }

    @Override
    public void fill(double x, double y, double width, double height, int colour) {
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\"/>\n",
                number(x),
                number(y),
                number(width),
                number(height),
                hex(colour)));
    }

    @Override
    public void line(double[] xs, double[] ys, double thickness, double dash, int colour) {
        out.append("<polyline fill=\"none\" stroke=\"").append(hex(colour));
        out.append("\" stroke-width=\"").append(number(thickness)).append('"');
        if (dash > 0) {
            out.append(" stroke-dasharray=\"").append(number(dash)).append('"');
        }
        out.append(" stroke-linejoin=\"round\" points=\"");
        appendPoints(xs, ys);
        out.append("\"/>\n");
    }

    @Override
    public void shape(double[] xs, double[] ys, int colour) {
        out.append("<polygon fill=\"").append(hex(colour)).append("\" points=\"");
        appendPoints(xs, ys);
        out.append("\"/>\n");
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor, double size, int colour) {
        String way = anchor == Anchor.START ? "start" : anchor == Anchor.MIDDLE ? "middle" : "end";
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\" fill=\"%s\">",
                number(x),
                number(y),
                number(size),
                way,
                hex(colour)));
        out.append(escaped(text)).append("</text>\n");
    }

    private void appendPoints(double[] xs, double[] ys) {
        for (int i = 0; i < xs.length; i++) {
            out.append(i == 0 ? "" : " ").append(number(xs[i])).append(',').append(number(ys[i]));
        }
    }

    byte[] bytes() {
        return (out + "</svg>\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceFirst("\\.?0+$", "");
    }

    private static String hex(int colour) {
        return String.format(Locale.ROOT, "#%06X", colour);
    }

    /** XML 1.0 allows no control characters but tab and line ends; they are left out. */
    private static String escaped(String text) {
        return text.replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uFFFF]", "")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
