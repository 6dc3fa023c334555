package cablewright.ui.picture;

import java.io.IOException;
import java.io.UncheckedIOException;

/** The kinds of picture file. */
public enum PictureFormat {
    /** Pixels, twice as many each way as there are points. */
    PNG,
    /** Vectors for pages on a screen. */
    SVG,
    /** Vectors for paper. */
    PDF;

    /**
     * Draws a plot. The same plot gives the same bytes on every machine.
     *
     * @param plot what to draw
     * @return the picture file
     */
    public byte[] draw(TracePlot plot) {
        try {
            switch (this) {
                case PNG:
                    PngPen png = new PngPen(PlotDrawing.WIDTH, PlotDrawing.HEIGHT);
                    new PlotDrawing(plot, png).draw();
                    return png.bytes();
                case SVG:
                    SvgPen svg = new SvgPen(PlotDrawing.WIDTH, PlotDrawing.HEIGHT, plot.title());
                    new PlotDrawing(plot, svg).draw();
                    return svg.bytes();
                default:
                    PdfPen pdf = new PdfPen(PlotDrawing.WIDTH, PlotDrawing.HEIGHT, plot.title());
                    new PlotDrawing(plot, pdf).draw();
                    return pdf.bytes();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a picture can't be drawn in memory", e);
        }
    }
}
