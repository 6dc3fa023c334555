// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.kernel.ComplexBlock;
import java.util.ArrayList;
import java.util.List;

/**
 * What becomes of a forward wave of 1 V that comes to a split stretch: voltage and current of the line's own circuit within
 * it, the wave that goes on behind it, and the wave that leaves on the neighbour toward its near end.
 *
 * <p>In each mode V(x) = a e^(−γx) + b e^(−γ(l−x)), with b = S a e^(−γl) taken over both modes; the line's voltage is the sum
 * of the two.
 */
public final class EvenOddField {

    private final EvenOddSection section;
    private final List<EvenOddSection.Station> stations;
    private final List<List<ComplexBlock>> arriving = new ArrayList<>();
    private final ComplexBlock leaving;

    EvenOddField(EvenOddSection section) {
        this.section = section;
        this.stations = List.copyOf(section.stations());
        ComplexBlock neighbour = section.neighbourForward();
        List<ComplexBlock> forward = List.of(new ComplexBlock(neighbour.count()).fill(1), neighbour);
        List<ComplexBlock> at = times(section.fromFront(), forward);
        for (EvenOddSection.Station station : stations) {
            arriving.add(at);
            at = times(station.onward(), at);
        }
        leaving = at.get(0);
    }

    private static List<ComplexBlock> times(List<ComplexBlock> matrix, List<ComplexBlock> vector) {
        List<ComplexBlock> out = new ArrayList<>();
        for (int row = 0; row < 2; row++) {
            out.add(new ComplexBlock(vector.get(0).count())
                    .setProduct(matrix.get(2 * row), vector.get(0))
                    .plusProduct(matrix.get(2 * row + 1), vector.get(1)));
        }
        return out;
    }

    /** Takes a forward wave from before the stretch to behind it. */
    public void multiplyOnward(ComplexBlock forward) {
        forward.times(leaving);
    }

    /** Takes a forward wave from before the stretch to the neighbour, on its way to the near end. */
    public void multiplyHeard(ComplexBlock forward) {
        forward.times(section.heard());
    }

    /** Writes voltage and current at a place, so many metres from the start of the stretch, for a given forward wave. */
    public void at(double metres, ComplexBlock forward, ComplexBlock volts, ComplexBlock amperes) {
        int chosen = 0;
        while (chosen + 1 < stations.size() && metres > stations.get(chosen + 1).startMetres()) {
            chosen++;
        }
        EvenOddSection.Station station = stations.get(chosen);
        double length = station.line().lengthMetres();
        double along = Math.max(0, Math.min(length, metres - station.startMetres()));
        List<LineWave> modes = List.of(station.even(), station.odd());
        List<ComplexBlock> a = arriving.get(chosen);
        List<ComplexBlock> atEnd = new ArrayList<>();
        for (int m = 0; m < 2; m++) {
            atEnd.add(modes.get(m).decay(length).times(a.get(m)));
        }
        List<ComplexBlock> back = times(station.end(), atEnd);
        volts.fill(0);
        amperes.fill(0);
        for (int m = 0; m < 2; m++) {
            ComplexBlock out = modes.get(m).decay(along).times(a.get(m)).times(forward);
            ComplexBlock in =
                    modes.get(m).decay(length - along).times(back.get(m)).times(forward);
            volts.plus(out).plus(in);
            amperes.plus(out.minus(in).over(modes.get(m).impedance()));
        }
    }
}
