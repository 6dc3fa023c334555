// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.kernel.ComplexArray;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What becomes of a forward wave of 1 V that comes to a split stretch: voltage and current of the line's own circuit within
 * it, the wave that goes on behind it, and the wave that leaves on the neighbour toward its near end.
 *
 * <p>In each mode V(x) = a e^(−γx) + b e^(−γ(l−x)), with b = S a e^(−γl) taken over both modes; the line's voltage is the sum
 * of the two.
 */
public final class SplitField {

    private final SplitWave wave;
    private final List<SplitWave.Station> stations;
    private final List<ComplexArray[]> arriving = new ArrayList<>();
    private final ComplexArray[] leaving;

    SplitField(SplitWave wave) {
        this.wave = wave;
        this.stations = List.copyOf(wave.stations());
        ComplexArray neighbour = wave.neighbourForward();
        int n = neighbour.count();
        double[] one = new double[n];
        Arrays.fill(one, 1);
        ComplexArray[] forward = {ComplexArray.takingOver(one, new double[n]), neighbour};
        ComplexArray[] at = times(wave.fromFront(), forward);
        for (SplitWave.Station station : stations) {
            arriving.add(at);
            at = times(station.onward(), at);
        }
        leaving = at;
    }

    private static ComplexArray[] times(ComplexArray[] matrix, ComplexArray[] vector) {
        int n = vector[0].count();
        ComplexArray[] out = new ComplexArray[2];
        for (int row = 0; row < 2; row++) {
            double[] re = new double[n];
            double[] im = new double[n];
            for (int column = 0; column < 2; column++) {
                ComplexArray m = matrix[2 * row + column];
                ComplexArray v = vector[column];
                for (int k = 0; k < n; k++) {
                    re[k] += m.re(k) * v.re(k) - m.im(k) * v.im(k);
                    im[k] += m.re(k) * v.im(k) + m.im(k) * v.re(k);
                }
            }
            out[row] = ComplexArray.takingOver(re, im);
        }
        return out;
    }

    /** Takes a forward wave from before the stretch to behind it. */
    public void multiplyOnward(RunningProduct forward) {
        multiply(forward, leaving[0]);
    }

    /** Takes a forward wave from before the stretch to the neighbour, on its way to the near end. */
    public void multiplyHeard(RunningProduct forward) {
        multiply(forward, wave.heard());
    }

    private static void multiply(RunningProduct product, ComplexArray by) {
        for (int k = 0; k < by.count(); k++) {
            product.times(k, by.re(k), by.im(k));
        }
    }

    /** Writes voltage and current at a place, so many metres from the start of the stretch, for a given forward wave. */
    public void at(double metres, RunningProduct forward, double[] vRe, double[] vIm, double[] iRe, double[] iIm) {
        int chosen = 0;
        while (chosen + 1 < stations.size() && metres > stations.get(chosen + 1).startMetres()) {
            chosen++;
        }
        SplitWave.Station station = stations.get(chosen);
        double length = station.line().lengthMetres();
        double along = Math.max(0, Math.min(length, metres - station.startMetres()));
        LineTable.Wave[] modes = {station.even(), station.odd()};
        ComplexArray[] a = arriving.get(chosen);
        ComplexArray[] atEnd = new ComplexArray[2];
        for (int m = 0; m < 2; m++) {
            atEnd[m] = product(a[m], LineTable.decay(modes[m].propagation(), length));
        }
        ComplexArray[] back = times(station.end(), atEnd);
        for (int m = 0; m < 2; m++) {
            ComplexArray out = product(a[m], LineTable.decay(modes[m].propagation(), along));
            ComplexArray in = product(back[m], LineTable.decay(modes[m].propagation(), length - along));
            add(m == 0, out, in, modes[m].impedance(), forward, vRe, vIm, iRe, iIm);
        }
    }

    private static void add(
            boolean first,
            ComplexArray out,
            ComplexArray in,
            ComplexArray impedance,
            RunningProduct forward,
            double[] vRe,
            double[] vIm,
            double[] iRe,
            double[] iIm) {
        for (int k = 0; k < out.count(); k++) {
            double fRe = forward.re(k);
            double fIm = forward.im(k);
            double sumRe = out.re(k) + in.re(k);
            double sumIm = out.im(k) + in.im(k);
            double gapRe = out.re(k) - in.re(k);
            double gapIm = out.im(k) - in.im(k);
            double zRe = impedance.re(k);
            double zIm = impedance.im(k);
            double size = zRe * zRe + zIm * zIm;
            double qRe = (gapRe * zRe + gapIm * zIm) / size;
            double qIm = (gapIm * zRe - gapRe * zIm) / size;
            vRe[k] = (first ? 0 : vRe[k]) + fRe * sumRe - fIm * sumIm;
            vIm[k] = (first ? 0 : vIm[k]) + fRe * sumIm + fIm * sumRe;
            iRe[k] = (first ? 0 : iRe[k]) + fRe * qRe - fIm * qIm;
            iIm[k] = (first ? 0 : iIm[k]) + fRe * qIm + fIm * qRe;
        }
    }

    private static ComplexArray product(ComplexArray a, ComplexArray b) {
        double[] re = new double[a.count()];
        double[] im = new double[a.count()];
        for (int k = 0; k < re.length; k++) {
            re[k] = a.re(k) * b.re(k) - a.im(k) * b.im(k);
            im[k] = a.re(k) * b.im(k) + a.im(k) * b.re(k);
        }
        return ComplexArray.takingOver(re, im);
    }
}
