// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

import cablewright.lessons.demonstration.RoundTrip;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.Waveform;
import java.util.List;

/**
 * The echo of damage of any severity at any distance, from factors that are each computed once.
 *
 * <p>With g the reflection of the sound, endless cable on the source's resistance, and R that of the damage on the cable's
 * own impedance, the damage at distance d changes the port's reflection by
 * {@code (1 − g²) D/(1 + g D)}, {@code D = R e^(−2γd)}: exact. R is found from the reflection G of the damage right at the port,
 * {@code R = (G − g)/(1 − gG)}. The delay common to all is taken out of e^(−2γd), so the inverse transform need only be as
 * long as the echo itself.
 */
final class DamageEchoes {

    private final DamageMapSettings wanted;
    private final ContourGrid grid;
    private final ComplexArray sent;
    private final ComplexArray sound;
    private final ComplexBlock propagation;
    private final RoundTrip trip;

    DamageEchoes(DamageMapSettings wanted, double echoSeconds) {
        this.wanted = wanted;
        Reflectometer reflectometer = new Reflectometer(wanted.instrument());
        double longest = reflectometer.longestSampleSeconds(wanted.settings().stimulus());
        this.trip = new RoundTrip(wanted.type(), 1 / longest);
        double ahead = 2 * wanted.farthestMetres() * trip.slowness() - trip.firstSeconds(wanted.farthestMetres());
        this.grid = ContourGrid.forRecord(echoSeconds + ahead, longest);
        this.sent = reflectometer.received(grid, wanted.settings().stimulus());
        this.sound = reflection(soundCable());
        this.propagation = trip.propagation(grid, sent.count());
    }

    /** Time per metre by which the trace's distances are counted [s/m]. */
    double slowness() {
        return trip.slowness();
    }

    private Cable soundCable() {
        return new Cable(
                "Sound cable",
                List.of(new Run(wanted.type(), wanted.damageMetres())),
                List.of(),
                new FarEnd.Endless(wanted.type()));
    }

    private ComplexArray reflection(Cable cable) {
        return Measurement.at(cable, wanted.instrument()).port().reflection(grid, sent.count());
    }

    /** What damage of a severity reflects, on the cable's own impedance: R. */
    ComplexArray ofSeverity(double change) {
        ComplexArray changed = reflection(wanted.cable(0, change));
        ComplexBlock atPort = new ComplexBlock(changed.count()).set(changed);
        ComplexBlock undone = new ComplexBlock(changed.count()).set(sound);
        ComplexBlock both = new ComplexBlock(changed.count()).setProduct(undone, atPort);
        return atPort.minus(undone).over(both.setOneMinus(both)).copy();
    }

    /** What the way to a distance and back leaves, less the delay of the very first. */
    ComplexArray toDistance(double metres) {
        return trip.decay(grid, propagation, metres);
    }

    /** The echo as the receiver shows it; time 0 is {@link #startSeconds} after the start of the outgoing wave. */
    Waveform echo(ComplexArray severity, ComplexArray distance, double metres) {
        int n = sent.count();
        ComplexBlock damage = new ComplexBlock(n).set(severity).times(new ComplexBlock(n).set(distance));
        ComplexBlock port = new ComplexBlock(n).set(sound);
        double start = startSeconds(metres);
        double gone = Math.exp(-grid.dampingPerSecond() * start);
        ComplexBlock again = new ComplexBlock(n);
        for (int k = 0; k < n; k++) {
            double angle = -k * grid.spacingRadiansPerSecond() * start;
            again.put(k, gone * Math.cos(angle), gone * Math.sin(angle));
        }
        again.times(damage).times(port).plus(1);
        ComplexBlock echo =
                port.setProduct(port, port).setOneMinus(port).times(damage).over(again);
        return Inversion.invert(grid, echo.times(damage.set(sent)).copy());
    }

    /** When the echo of a distance may begin, after the start of the outgoing wave [s]. */
    double startSeconds(double metres) {
        return trip.firstSeconds(metres);
    }
}
