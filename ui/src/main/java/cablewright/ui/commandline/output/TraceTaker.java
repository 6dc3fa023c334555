// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.multiconductor.NeighbourPort;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.EvenTimes;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.TakenTrace.Column;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Takes the trace of one end of a cable at given settings. */
public final class TraceTaker {

    private final Cable cable;
    private final LineEnd end;
    private final double sourceOhms;
    private final Optional<String> crosstalkOf;
    private final Settings settings;
    private final RootCommand root;

    public TraceTaker(
            Cable cable,
            LineEnd end,
            double sourceOhms,
            Optional<String> crosstalkOf,
            Settings settings,
            RootCommand root) {
        this.cable = cable;
        this.end = end;
        this.sourceOhms = sourceOhms;
        this.crosstalkOf = crosstalkOf;
        this.settings = settings;
        this.root = root;
    }

    private PortResponse port() {
        Cable seen = cable.seenFrom(end);
        return crosstalkOf.isPresent()
                ? new NeighbourPort(seen, sourceOhms, crosstalkOf.get())
                : new SimulatedPort(seen, sourceOhms);
    }

    /** The exact voltage at the port, at evenly spaced times from 0 to that of the range. */
    public TakenTrace exact(int count) {
        Stimulus stimulus = settings.stimulus();
        double half = stimulus.halfHeightSeconds();
        double last = half + settings.secondsThereAndBack(settings.rangeMetres());
        EvenTimes times = EvenTimes.of(port(), stimulus, last, count);
        if (times.samplesPerEdge() < EvenTimes.FINE_SAMPLES_PER_EDGE) {
            root.remark(root.say("trace.coarse", Math.round(times.samplesPerEdge())));
        }
        double[] seconds = new double[count];
        double[] metres = new double[count];
        double[] port = new double[count];
        double[] reflected = times.reflected().copyOfValues();
        for (int i = 0; i < count; i++) {
            seconds[i] = times.reflected().time(i);
            metres[i] = settings.metresThereAndBack(seconds[i] - half);
            port[i] = times.outgoing().sample(i) + reflected[i];
        }
        Map<String, Object> metadata = settingsByName();
        metadata.put("samples_per_edge", times.samplesPerEdge());
        if (crosstalkOf.isPresent()) {
            return new TakenTrace(
                    cable.title(),
                    metadata,
                    List.of(
                            new Column("time_s", seconds),
                            new Column("distance_m", metres),
                            new Column("neighbour_v", reflected)));
        }
        return new TakenTrace(
                cable.title(),
                metadata,
                List.of(
                        new Column("time_s", seconds),
                        new Column("distance_m", metres),
                        new Column("port_v", port),
                        new Column("reflected_v", reflected)));
    }

    /** What a receiver shows. */
    public TakenTrace received(Instrument instrument, long seed) {
        // A neighbour's receiver sees nothing of the outgoing wave.
        Instrument used = crosstalkOf.isPresent() ? instrument.withOutgoingShare(0) : instrument;
        Trace trace = new Reflectometer(used).measure(port(), settings, seed);
        double[] seconds = new double[trace.count()];
        double[] metres = new double[trace.count()];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = trace.seconds(i);
            metres[i] = trace.metres(i);
        }
        Map<String, Object> metadata = settingsByName();
        metadata.put("bandwidth_hz", instrument.bandwidthHertz());
        metadata.put("noise_v", instrument.noiseVolts());
        metadata.put("averages", settings.averages());
        metadata.put("gain_db", settings.gainDecibels());
        metadata.put("converter_bits", instrument.converterBits());
        metadata.put("seed", seed);
        return new TakenTrace(
                cable.title(),
                metadata,
                List.of(
                        new Column("time_s", seconds),
                        new Column("distance_m", metres),
                        new Column("trace_v", trace.copyOfVolts())));
    }

    private Map<String, Object> settingsByName() {
        Map<String, Object> metadata = new LinkedHashMap<>();
        metadata.put("end", end.name().toLowerCase(Locale.ROOT));
        metadata.put("stimulus", settings.stimulus().getClass().getSimpleName());
        metadata.put(
                settings.stimulus().isStep() ? "rise_s" : "width_s",
                settings.stimulus().resolutionSeconds());
        metadata.put("half_height_s", settings.stimulus().halfHeightSeconds());
        metadata.put("source_ohm", sourceOhms);
        metadata.put("velocity_fraction", settings.velocityFraction());
        metadata.put("range_m", settings.rangeMetres());
        crosstalkOf.ifPresent(id -> metadata.put("crosstalk_of", id));
        return metadata;
    }

    /** One line with what was set, so that nobody has to guess what was chosen. */
    public String settingsLine() {
        Words words = root.words();
        Quantities quantities = words.quantities();
        return root.say(
                        "trace.line",
                        cable.title(),
                        words.end(end),
                        words.stimulus(settings.stimulus()),
                        quantities.ohms(sourceOhms),
                        Quantities.number(settings.velocityFraction(), 3),
                        quantities.shortLength(settings.rangeMetres()))
                + crosstalkOf.map(id -> root.say("trace.neighbour", id)).orElse("");
    }
}
