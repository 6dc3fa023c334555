// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.instrument.Settings;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.TerminalSize;
import cablewright.ui.commandline.option.TraceFormat;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.drawing.text.TextPlot;
import cablewright.ui.drawing.track.TracePicture;
import cablewright.ui.drawing.track.TracePlot;
import cablewright.ui.drawing.track.TracePlot.Window;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes a trace in the format that was asked for. */
public final class TracePictures {

    private static final int HEIGHT = 26;

    private final Environment surroundings;
    private final LengthUnit unit;

    public TracePictures(Environment surroundings, LengthUnit unit) {
        this.surroundings = surroundings;
        this.unit = unit;
    }

    public byte[] bytes(TakenTrace trace, Settings settings, TraceFormat format) {
        return switch (format) {
            case CSV -> TraceTables.csv(trace);
            case JSON -> TraceTables.json(trace);
            case TEXT -> text(plot(trace, settings));
            case PNG -> picture(trace, settings, PictureFormat.PNG);
            case SVG -> picture(trace, settings, PictureFormat.SVG);
            case PDF -> picture(trace, settings, PictureFormat.PDF);
        };
    }

    private byte[] picture(TakenTrace trace, Settings settings, PictureFormat format) {
        return new TracePicture(plot(trace, settings), Words.in(unit, surroundings.locale())).draw(format);
    }

    private byte[] text(TracePlot plot) {
        TerminalSize size = TerminalSize.of(surroundings);
        String drawn =
                new TextPlot(size.columns(), Math.min(HEIGHT, size.lines() - 4), surroundings.style()).draw(plot);
        String text = plot.title() + "\n" + plot.note() + "\n" + drawn;
        return surroundings.style().plain(text).getBytes(StandardCharsets.UTF_8);
    }

    private TracePlot plot(TakenTrace trace, Settings settings) {
        double[] x = trace.metres();
        double[] percent = trace.volts();
        boolean exactStep =
                settings.stimulus().isStep() && trace.columns().get(2).name().equals("port_v");
        for (int i = 0; i < x.length; i++) {
            x[i] = unit.fromMetres(x[i]);
            percent[i] = 100 * (percent[i] - (exactStep ? 1 : 0));
        }
        double right = unit.fromMetres(settings.rangeMetres());
        return new TracePlot(
                trace.title(), note(settings, trace), unit, x, percent, window(x, percent, right, settings), List.of());
    }

    /** Heights that show what comes back whole; the outgoing wave runs out of the picture. */
    private Window window(double[] x, double[] percent, double right, Settings settings) {
        double settled =
                settings.stimulus().settledSeconds() - settings.stimulus().halfHeightSeconds();
        double blind = unit.fromMetres(settings.metresThereAndBack(settled));
        Window late = TracePlot.windowAround(x, percent, Math.min(1.05 * blind, 0.5 * right), right);
        return new Window(-0.02 * right, right, late.bottom(), late.top());
    }

    private String note(Settings settings, TakenTrace trace) {
        Words words = Words.in(unit, surroundings.locale());
        Object end = trace.settings().get("end");
        Object neighbour = trace.settings().get("crosstalk_of");
        return (end == null ? "" : surroundings.say("trace.end." + end))
                + surroundings.say(
                        "trace.set",
                        words.stimulus(settings.stimulus()),
                        Quantities.number(settings.velocityFraction(), 3))
                + (neighbour == null ? "" : surroundings.say("trace.neighbour", neighbour));
    }
}
