// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.solve.BlockWorkspace;
import cablewright.simulator.solve.ForwardWave;
import cablewright.simulator.solve.LineWave;
import cablewright.simulator.solve.Probe;
import java.util.List;
import java.util.stream.Stream;

/** Voltage and current at each of a list of places and frequencies, for an outgoing wave of 1 V. */
public final class FieldValues {

    /** Steps that differ by less are one; the phase that this leaves is below 1e-11 at 10 GHz. */
    private static final double SAME_STEP_METRES = 1e-13;

    private final BlockWorkspace workspace;
    private final int count;
    private final ComplexBlock[] volts;
    private final ComplexBlock[] amperes;

    FieldValues(int places, BlockWorkspace workspace) {
        this.workspace = workspace;
        this.count = workspace.count();
        this.volts = zeros(places, count);
        this.amperes = zeros(places, count);
    }

    private static ComplexBlock[] zeros(int places, int count) {
        return Stream.generate(() -> new ComplexBlock(count)).limit(places).toArray(ComplexBlock[]::new);
    }

    /**
     * Returns the voltage at a place.
     *
     * @param place number of the place, from 0
     * @return voltage at each frequency, over the outgoing wave
     */
    public ComplexBlock volts(int place) {
        return volts[place];
    }

    /**
     * Returns the current at a place, counted away from the port.
     *
     * @param place number of the place, from 0
     * @return current at each frequency [A/V], over the outgoing wave
     */
    public ComplexBlock amperes(int place) {
        return amperes[place];
    }

    void setPort(int place, ComplexBlock reflection, double sourceOhms) {
        volts[place].setOnePlus(reflection, 1);
        amperes[place].setOneMinus(reflection).times(1 / sourceOhms);
    }

    /** Takes the forward wave through all probes, filling in the places on the way. */
    void walk(ForwardWave wave, PlaceMap map, ComplexBlock forward) {
        for (Probe probe : wave.probes()) {
            forward.times(probe.arrival());
            if (probe instanceof Probe.OnLine on) {
                alongLine(on, map.places(on.element()), forward);
            } else if (probe instanceof Probe.AtBranch at) {
                ComplexBlock into = new ComplexBlock(count).setProduct(forward, at.side());
                walk(at.branch(), map.onBranch(at.element()), into);
            } else if (probe instanceof Probe.AtSplit at) {
                for (PlaceMap.Place place : map.places(at.element())) {
                    int number = place.number();
                    at.field().at(place.offsetMetres(), forward, volts[number], amperes[number]);
                }
                at.field().multiplyOnward(forward);
            }
        }
    }

    /** Forward waves from the near end to the far end, then those that come back, and their sum and difference. */
    private void alongLine(Probe.OnLine on, List<PlaceMap.Place> places, ComplexBlock forward) {
        LineWave wave = workspace.wave(on.line().section());
        Steps steps = new Steps(wave, count);
        double before = 0;
        for (PlaceMap.Place place : places) {
            forward.times(steps.over(place.offsetMetres() - before));
            before = place.offsetMetres();
            volts[place.number()].set(forward);
        }
        double after = on.line().lengthMetres();
        forward.times(steps.over(after - before));
        ComplexBlock back = new ComplexBlock(count).setProduct(forward, on.end());
        for (int i = places.size() - 1; i >= 0; i--) {
            back.times(steps.over(after - places.get(i).offsetMetres()));
            after = places.get(i).offsetMetres();
            int number = places.get(i).number();
            amperes[number].set(volts[number]).minus(back).over(wave.impedance());
            volts[number].plus(back);
        }
    }

    /** e^(−γΔ) of the step last asked for. */
    private static final class Steps {
        private final LineWave wave;
        private final ComplexBlock decay;
        private double metres = Double.NaN;

        Steps(LineWave wave, int count) {
            this.wave = wave;
            this.decay = new ComplexBlock(count);
        }

        ComplexBlock over(double wanted) {
            if (!(Math.abs(wanted - metres) <= SAME_STEP_METRES)) {
                metres = wanted;
                wave.decay(wanted, decay);
            }
            return decay;
        }
    }
}
