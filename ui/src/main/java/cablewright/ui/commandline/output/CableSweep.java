// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.exchange.ScatteringSweep;
import cablewright.simulator.field.LineField;
import cablewright.simulator.field.LinePlaces;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.multiconductor.NearEndCrosstalk;
import cablewright.simulator.port.SimulatedPort;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sweeps a cable in frequency, as one port or as two. */
public final class CableSweep {

    /** So short that no phase shows it; it puts the far port beyond what lies at the very end. */
    private static final double NEXT_TO_NOTHING_METRES = 2e-9;

    private final Cable cable;
    private final double[] hertz;

    public CableSweep(Cable cable, double... hertz) {
        this.cable = cable;
        this.hertz = hertz.clone();
    }

    public ScatteringSweep onePort(double ohms) {
        return ScatteringSweep.onePort(hertz, ohms, new SimulatedPort(cable, ohms).sweep(hertz));
    }

    /**
     * Returns the two-port of both ends. S11 and S22 are what each reflects while the other is ended by its reference; S21 is
     * (V2/√R2)/(a/√R1) with V2 the voltage at the far end for an outgoing wave a of 1 V, and S12 the same from there.
     */
    public ScatteringSweep twoPorts(double nearOhms, double farOhms) {
        cable.events().stream()
                .filter(event -> event instanceof Split split && !split.putRight())
                .forEach(event -> {
                    throw new IllegalArgumentException(
                            "split \"" + event.id() + "\" is never put right, so the far end lies"
                                    + " across wires of both pairs and is no port of one: ask for one port");
                });
        Cable near = ended(cable, farOhms);
        Cable far = ended(cable.seenFromFarEnd(), nearOhms);
        return ScatteringSweep.twoPort(
                hertz,
                nearOhms,
                farOhms,
                List.of(
                        new SimulatedPort(near, nearOhms).sweep(hertz),
                        through(far, farOhms, nearOhms),
                        through(near, nearOhms, farOhms),
                        new SimulatedPort(far, farOhms).sweep(hertz)));
    }

    /** Returns the two-port of the near ends of the tested pair and of a split's neighbour. */
    public ScatteringSweep besideEachOther(String splitId, double ohms, double neighbourOhms) {
        return ScatteringSweep.twoPort(
                hertz, ohms, neighbourOhms, new NearEndCrosstalk(cable, splitId, ohms, neighbourOhms).sweep(hertz));
    }

    private static Cable ended(Cable cable, double ohms) {
        return new Cable(
                cable.title(),
                cable.runs(),
                cable.events(),
                FarEnd.Terminated.byOhms(ohms),
                cable.celsius(),
                Optional.empty());
    }

    private ComplexArray through(Cable ended, double fromOhms, double toOhms) {
        Cable whole = beyondTheLast(ended);
        LinePlaces end = new LinePlaces(List.of(), List.of(whole.lengthMetres()));
        LineField.Solver solver = new LineField(whole, fromOhms, List.of(end)).upTo(hertz[hertz.length - 1]);
        ComplexArray volts = solver.at(Frequencies.ofSweep(hertz)).volts(0).copy();
        double scale = Math.sqrt(fromOhms / toOhms);
        double[] re = new double[hertz.length];
        double[] im = new double[hertz.length];
        for (int k = 0; k < re.length; k++) {
            re[k] = scale * volts.re(k);
            im[k] = scale * volts.im(k);
        }
        return ComplexArray.takingOver(re, im);
    }

    private static Cable beyondTheLast(Cable cable) {
        double length = cable.lengthMetres();
        boolean atTheEnd = cable.events().stream().map(Event::endMetres).anyMatch(end -> end > length - 1e-6);
        if (!atTheEnd) {
            return cable;
        }
        List<Run> runs = new ArrayList<>(cable.runs());
        Run last = runs.get(runs.size() - 1);
        runs.add(new Run(last.type(), NEXT_TO_NOTHING_METRES));
        return new Cable(cable.title(), runs, cable.events(), cable.farEnd(), cable.celsius(), cable.testLead());
    }
}
