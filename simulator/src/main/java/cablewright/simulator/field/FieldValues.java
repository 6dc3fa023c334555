// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.solve.LineTable;
import cablewright.simulator.solve.Probe;
import cablewright.simulator.solve.ReflectionRecursion;
import cablewright.simulator.solve.RunningProduct;
import cablewright.simulator.solve.SplitField;
import cablewright.simulator.solve.TrackedWave;
import java.util.List;

/** Voltage and current at each of a list of places and frequencies, for an outgoing wave of 1 V. */
public final class FieldValues {

    /** Steps that differ by less are one; the phase that this leaves is below 1e-11 at 10 GHz. */
    private static final double SAME_STEP_METRES = 1e-13;

    private final LineTable table;
    private final int count;
    private final double[][] voltRe;
    private final double[][] voltIm;
    private final double[][] ampereRe;
    private final double[][] ampereIm;

    FieldValues(int places, LineTable table) {
        this.table = table;
        this.count = table.frequencies().count();
        this.voltRe = new double[places][count];
        this.voltIm = new double[places][count];
        this.ampereRe = new double[places][count];
        this.ampereIm = new double[places][count];
    }

    /**
     * Returns the voltage at a place.
     *
     * @param place number of the place, from 0
     * @return voltage at each frequency, over the outgoing wave
     */
    public ComplexArray volts(int place) {
        return ComplexArray.takingOver(voltRe[place], voltIm[place]);
    }

    /**
     * Returns the current at a place, counted away from the port.
     *
     * @param place number of the place, from 0
     * @return current at each frequency [A/V], over the outgoing wave
     */
    public ComplexArray amperes(int place) {
        return ComplexArray.takingOver(ampereRe[place], ampereIm[place]);
    }

    void setPort(int place, ReflectionRecursion wave, double sourceOhms) {
        for (int k = 0; k < count; k++) {
            voltRe[place][k] = 1 + wave.gRe(k);
            voltIm[place][k] = wave.gIm(k);
            ampereRe[place][k] = (1 - wave.gRe(k)) / sourceOhms;
            ampereIm[place][k] = -wave.gIm(k) / sourceOhms;
        }
    }

    /** Takes the forward wave through all stations, filling in the places on the way. */
    void walk(TrackedWave wave, PlaceMap map, RunningProduct forward) {
        for (Probe station : wave.stations()) {
            multiply(forward, station.arrival());
            if (station instanceof Probe.OnLine on) {
                alongLine(on, map.places(on.element()), forward);
            } else if (station instanceof Probe.AtBranch at) {
                RunningProduct into = new RunningProduct(count);
                multiply(into, forward);
                multiply(into, at.side());
                walk(at.branch(), map.onBranch(at.element()), into);
            } else if (station instanceof Probe.AtSplit at) {
                alongSplit(at.field(), map.places(at.element()), forward);
                at.field().multiplyOnward(forward);
            }
        }
    }

    private void multiply(RunningProduct product, RunningProduct by) {
        for (int k = 0; k < count; k++) {
            product.times(k, by.re(k), by.im(k));
        }
    }

    private void alongSplit(SplitField field, List<PlaceMap.Place> places, RunningProduct forward) {
        for (PlaceMap.Place place : places) {
            int number = place.number();
            field.at(place.offsetMetres(), forward, voltRe[number], voltIm[number], ampereRe[number], ampereIm[number]);
        }
    }

    /** Forward waves from the near end to the far end, then those that come back, and their sum and difference. */
    private void alongLine(Probe.OnLine on, List<PlaceMap.Place> places, RunningProduct forward) {
        LineTable.Wave wave = table.wave(on.line().section());
        Steps steps = new Steps(wave.propagation());
        double before = 0;
        for (PlaceMap.Place place : places) {
            advance(forward, steps.over(place.offsetMetres() - before));
            before = place.offsetMetres();
            for (int k = 0; k < count; k++) {
                voltRe[place.number()][k] = forward.re(k);
                voltIm[place.number()][k] = forward.im(k);
            }
        }
        double after = on.line().lengthMetres();
        advance(forward, steps.over(after - before));
        RunningProduct back = new RunningProduct(count);
        multiply(back, forward);
        for (int k = 0; k < count; k++) {
            back.times(k, on.endRe()[k], on.endIm()[k]);
        }
        for (int i = places.size() - 1; i >= 0; i--) {
            advance(back, steps.over(after - places.get(i).offsetMetres()));
            after = places.get(i).offsetMetres();
            addBack(places.get(i).number(), back, wave.impedance());
        }
    }

    private void advance(RunningProduct wave, ComplexArray step) {
        for (int k = 0; k < count; k++) {
            wave.times(k, step.re(k), step.im(k));
        }
    }

    private void addBack(int place, RunningProduct back, ComplexArray impedance) {
        for (int k = 0; k < count; k++) {
            double dRe = voltRe[place][k] - back.re(k);
            double dIm = voltIm[place][k] - back.im(k);
            double zRe = impedance.re(k);
            double zIm = impedance.im(k);
            double size = zRe * zRe + zIm * zIm;
            ampereRe[place][k] = (dRe * zRe + dIm * zIm) / size;
            ampereIm[place][k] = (dIm * zRe - dRe * zIm) / size;
            voltRe[place][k] += back.re(k);
            voltIm[place][k] += back.im(k);
        }
    }

    /** e^(−γΔ) of the step last asked for. */
    private static final class Steps {
        private final ComplexArray propagation;
        private double metres = Double.NaN;
        private ComplexArray decay;

        Steps(ComplexArray propagation) {
            this.propagation = propagation;
        }

        ComplexArray over(double wanted) {
            if (!(Math.abs(wanted - metres) <= SAME_STEP_METRES)) {
                metres = wanted;
                decay = LineTable.decay(propagation, wanted);
            }
            return decay;
        }
    }
}
