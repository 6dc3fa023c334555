// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.drawing.axis.DistanceView;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.axis.PercentScale;
import cablewright.ui.drawing.axis.ReducedCurve;
import cablewright.ui.drawing.palette.Palette;
import cablewright.ui.drawing.pen.Box;
import cablewright.ui.drawing.pen.Pen;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.CablePainter;
import cablewright.ui.drawing.track.FlagMarker;
import cablewright.ui.drawing.track.FlagPainter;
import cablewright.ui.drawing.track.RecordClaims;
import cablewright.ui.drawing.track.RecordPainter;
import cablewright.ui.drawing.track.TracePainter;
import cablewright.ui.drawing.track.TrackSheet;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;

/** The tracks on paper, one below the other over one distance axis: trace with a fine grid to read by, record, cable. */
final class PrintedTracks {

    private static final double TRACE_HEIGHT = 244;
    private static final double FONT = 9.1;
    private static final double SCALE = TrackSheet.scale(FONT);
    private static final double RECORD_HEIGHT = RecordPainter.HEIGHT * SCALE + 4;
    private static final double CABLE_HEIGHT = CablePainter.HEIGHT * SCALE + 4;

    private final Blocks blocks;
    private final Words words;
    private final DistanceView shown;

    /** Where blocks of some height are set one below the other. */
    interface Blocks {
        void block(double height, Drawing drawing);
    }

    /** Draws within a box. */
    interface Drawing {
        void draw(Pen pen, Box box);
    }

    PrintedTracks(Blocks blocks, Words words, double rangeMetres) {
        this.blocks = blocks;
        this.words = words;
        Extent extent = Extent.ofRange(rangeMetres);
        this.shown = new DistanceView(extent.fromMetres(), extent.toMetres(), 0, 1);
    }

    PrintedTracks(PageFlow flow, Words words, double rangeMetres) {
        this(
                (height, drawing) -> flow.block(
                        height, (pen, top) -> drawing.draw(pen, new Box(flow.left(), top, flow.width(), height))),
                words,
                rangeMetres);
    }

    private TrackSheet sheet(Pen pen, Box box) {
        return new TrackSheet(pen, Palette.LIGHT, box, shown, words.quantities().unit(), FONT);
    }

    void trace(Trace trace, List<FlagMarker> flags, String caption) {
        trace(trace, trace.clipVolts(), TRACE_HEIGHT, flags, caption);
    }

    /** A trace with a height and a vertical scale of its own. */
    void trace(Trace trace, double halfSpan, double height, List<FlagMarker> flags, String caption) {
        blocks.block(height, (pen, box) -> {
            TrackSheet sheet = sheet(pen, box);
            Box plot = TracePainter.plotOf(box, SCALE);
            PercentScale vertical = PercentScale.ofClipLevel(halfSpan, plot.y(), plot.height());
            TracePainter painter = new TracePainter(sheet, vertical);
            painter.drawGrid(true);
            ReducedCurve curve = painter.reduce(trace);
            painter.drawCurve(curve, TracePainter.Look.TRACE);
            painter.drawClipping(curve, Math.min(halfSpan, trace.clipVolts()));
            new FlagPainter(sheet).draw(flags);
            painter.drawCaption(caption, box.x());
        });
    }

    void record(AsBuiltRecord record, LineEnd end, String caption) {
        blocks.block(RECORD_HEIGHT, (pen, box) -> new RecordPainter(sheet(pen, box))
                .draw(RecordClaims.of(record, end, words), Optional.empty(), caption));
    }

    void cable(CableDrawing drawing, CablePainter.Labels labels, String caption) {
        blocks.block(
                CABLE_HEIGHT, (pen, box) -> new CablePainter(sheet(pen, box), words).draw(drawing, labels, caption));
    }
}
