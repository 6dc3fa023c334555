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
        ComplexArray atPort = reflection(wanted.cable(0, change));
        int n = atPort.count();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int k = 0; k < n; k++) {
            double gRe = sound.re(k);
            double gIm = sound.im(k);
            double nRe = atPort.re(k) - gRe;
            double nIm = atPort.im(k) - gIm;
            double dRe = 1 - (gRe * atPort.re(k) - gIm * atPort.im(k));
            double dIm = -(gRe * atPort.im(k) + gIm * atPort.re(k));
            double size = dRe * dRe + dIm * dIm;
            re[k] = (nRe * dRe + nIm * dIm) / size;
            im[k] = (nIm * dRe - nRe * dIm) / size;
        }
        return ComplexArray.takingOver(re, im);
    }

    /** What the way to a distance and back leaves, less the delay of the very first. */
    ComplexArray toDistance(double metres) {
        return trip.decay(grid, propagation, metres);
    }

    /** The echo as the receiver shows it; time 0 is {@link #startSeconds} after the start of the outgoing wave. */
    Waveform echo(ComplexArray severity, ComplexArray distance, double metres) {
        int n = sent.count();
        double[] re = new double[n];
        double[] im = new double[n];
        double start = startSeconds(metres);
        double gone = Math.exp(-grid.dampingPerSecond() * start);
        for (int k = 0; k < n; k++) {
            double dRe = severity.re(k) * distance.re(k) - severity.im(k) * distance.im(k);
            double dIm = severity.re(k) * distance.im(k) + severity.im(k) * distance.re(k);
            double gRe = sound.re(k);
            double gIm = sound.im(k);
            double tRe = 1 - gRe * gRe + gIm * gIm;
            double tIm = -2 * gRe * gIm;
            double angle = -k * grid.spacingRadiansPerSecond() * start;
            double bRe = gone * Math.cos(angle);
            double bIm = gone * Math.sin(angle);
            double againRe = gRe * dRe - gIm * dIm;
            double againIm = gRe * dIm + gIm * dRe;
            double denRe = 1 + againRe * bRe - againIm * bIm;
            double denIm = againRe * bIm + againIm * bRe;
            double size = denRe * denRe + denIm * denIm;
            double nRe = tRe * dRe - tIm * dIm;
            double nIm = tRe * dIm + tIm * dRe;
            double qRe = (nRe * denRe + nIm * denIm) / size;
            double qIm = (nIm * denRe - nRe * denIm) / size;
            re[k] = qRe * sent.re(k) - qIm * sent.im(k);
            im[k] = qRe * sent.im(k) + qIm * sent.re(k);
        }
        return Inversion.invert(grid, ComplexArray.takingOver(re, im));
    }

    /** When the echo of a distance may begin, after the start of the outgoing wave [s]. */
    double startSeconds(double metres) {
        return trip.firstSeconds(metres);
    }
}
