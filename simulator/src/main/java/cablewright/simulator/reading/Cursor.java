// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Require;
import cablewright.simulator.instrument.Trace;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a trace says at one place.
 *
 * @param metres distance at the set velocity [m]
 * @param seconds time since the outgoing edge was at half height [s]
 * @param volts what the trace shows there for an outgoing wave of 1 V [V]
 */
public record Cursor(double metres, double seconds, double volts) {

    /**
     * Sets a cursor on a trace.
     *
     * @param trace the trace
     * @param metres distance at the set velocity [m]; beyond the record the value at its end is read
     * @return what the trace says there, on the straight line between samples
     */
    public static Cursor on(Trace trace, double metres) {
        return new Cursor(metres, trace.settings().secondsThereAndBack(metres), trace.voltsAt(metres));
    }

    /**
     * Returns the reflection coefficient that the trace shows there: loss on the way is not taken out.
     *
     * @return ρ; empty where the trace shows more than any passive place can send back, as it does under the outgoing wave
     */
    public Optional<Reflection> reflection() {
        return Math.abs(volts) <= 1 ? Optional.of(new Reflection(volts)) : Optional.empty();
    }

    /**
     * Returns the impedance that a step trace seems to show there: Z = Zs (1 + ρ)/(1 − ρ).
     *
     * <p>Exact at the first change of impedance of a lossless line. Beyond it, what came back through earlier changes is
     * read too small, and loss along the line is shown as a slow rise; a {@link PeeledProfile} takes the former out. For a
     * pulse the number means the impedance only of a place that is longer than the pulse.
     *
     * @param sourceOhms resistance of the source on which the trace was taken [Ω], above 0
     * @return the impedance [Ω]; empty where the trace shows more than any passive place can send back
     */
    public OptionalDouble apparentOhms(double sourceOhms) {
        Require.above("sourceOhms", sourceOhms, 0);
        return reflection()
                .filter(rho -> rho.coefficient() < 1)
                .map(rho -> OptionalDouble.of(rho.impedanceOhms(sourceOhms)))
                .orElse(OptionalDouble.empty());
    }
}
