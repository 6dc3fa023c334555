// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import java.util.Arrays;
import java.util.List;

/**
 * Scattering parameters of one or two ports at rising frequencies: b_i = Σ S_ij a_j with a = (V + R I)/(2√R) and
 * b = (V − R I)/(2√R), where R is the reference resistance of the port (Kurokawa, Power Waves and the Scattering Matrix,
 * IEEE Trans. MTT 13(2), 194–202 (1965), from memory).
 */
public final class ScatteringSweep {

    /** Most frequencies in one sweep. */
    public static final int MOST_FREQUENCIES = 1_000_000;

    private final double[] hertz;
    private final List<PortLabel> ports;
    private final List<ComplexArray> parameters;

    /**
     * Name and reference resistance of a port.
     *
     * @param name its number, or in a mixed-mode file a name such as "D1,2"
     * @param referenceOhms reference resistance [Ω], above 0
     */
    public record PortLabel(String name, double referenceOhms) {

        // Checks the reference resistance.
        public PortLabel {
            if (!(referenceOhms > 0 && Double.isFinite(referenceOhms))) {
                throw new IllegalArgumentException(
                        "referenceOhms of port " + name + " is " + referenceOhms + "; it must be greater than 0");
            }
        }
    }

    /** Copies the arrays and checks that all have as many entries as there are frequencies. */
    public ScatteringSweep(double[] hertz, List<PortLabel> ports, List<ComplexArray> parameters) {
        this.hertz = hertz.clone();
        this.ports = List.copyOf(ports);
        this.parameters = List.copyOf(parameters);
        requireRising(this.hertz);
        for (ComplexArray parameter : this.parameters) {
            if (parameter.count() != hertz.length) {
                throw new IllegalArgumentException("a parameter has " + parameter.count() + " values and hertz has "
                        + hertz.length + "; they must match");
            }
        }
    }

    /**
     * Makes the sweep of one port.
     *
     * @param hertz frequencies [Hz], 0 or more, rising
     * @param referenceOhms reference resistance [Ω]
     * @param reflection S11 at each frequency
     * @return the sweep
     */
    public static ScatteringSweep onePort(double[] hertz, double referenceOhms, ComplexArray reflection) {
        return new ScatteringSweep(hertz, List.of(new PortLabel("1", referenceOhms)), List.of(reflection));
    }

    /**
     * Makes the sweep of two ports.
     *
     * @param hertz frequencies [Hz], 0 or more, rising
     * @param firstOhms reference resistance [Ω]
     * @param secondOhms reference resistance [Ω]
     * @param parameters S11, S12, S21, S22 in this order, each at every frequency
     * @return the sweep
     */
    public static ScatteringSweep twoPort(
            double[] hertz, double firstOhms, double secondOhms, List<ComplexArray> parameters) {
        if (parameters.size() != 4) {
            throw new IllegalArgumentException(
                    "parameters has " + parameters.size() + " entries; two ports have S11, S12, S21 and S22");
        }
        return new ScatteringSweep(
                hertz, List.of(new PortLabel("1", firstOhms), new PortLabel("2", secondOhms)), parameters);
    }

    private static void requireRising(double[] hertz) {
        if (hertz.length == 0 || hertz.length > MOST_FREQUENCIES) {
            throw new IllegalArgumentException(
                    "hertz has " + hertz.length + " entries; a sweep has 1 to " + MOST_FREQUENCIES);
        }
        for (int k = 0; k < hertz.length; k++) {
            double least = k == 0 ? 0 : Math.nextUp(hertz[k - 1]);
            if (!(hertz[k] >= least && Double.isFinite(hertz[k]))) {
                throw new IllegalArgumentException("hertz[" + k + "] is " + hertz[k]
                        + "; frequencies must be finite, 0 or more, and each greater than the one before");
            }
        }
    }

    public List<PortLabel> ports() {
        return ports;
    }

    /**
     * Returns how many frequencies there are.
     *
     * @return number of frequencies
     */
    public int count() {
        return hertz.length;
    }

    /**
     * Returns a frequency.
     *
     * @param k index, from 0
     * @return frequency [Hz]
     */
    public double hertz(int k) {
        return hertz[k];
    }

    /**
     * Returns all frequencies.
     *
     * @return a fresh copy [Hz]
     */
    public double[] copyOfHertz() {
        return hertz.clone();
    }

    /**
     * Returns one parameter.
     *
     * @param to number of the port at which a wave leaves, from 1
     * @param from number of the port at which a wave enters, from 1
     * @return S at each frequency
     */
    public ComplexArray parameter(int to, int from) {
        return parameters.get((requirePort(to) - 1) * ports.size() + requirePort(from) - 1);
    }

    private int requirePort(int port) {
        if (port < 1 || port > ports.size()) {
            throw new IllegalArgumentException("port is " + port + "; allowed is 1 to " + ports.size());
        }
        return port;
    }

    /**
     * Returns what a port reflects while the other one is ended by its reference resistance, as it was measured.
     *
     * @param port number of the port, from 1
     * @return S11 or S22
     */
    public ComplexArray reflection(int port) {
        return parameter(port, port);
    }

    /**
     * Works out what a port reflects while the other one is ended by another resistance:
     * Γ = S11 + S12 S21 ρ/(1 − S22 ρ), ρ = (R − R2)/(R + R2) (Pozar, Microwave Engineering, 4th ed., ch. 4, from memory).
     *
     * @param port number of the port, from 1
     * @param otherOhms what ends the other port [Ω], 0 or more; infinite leaves it open
     * @return Γ on the port's own reference
     */
    public ComplexArray reflectionWithOtherPortEndedBy(int port, double otherOhms) {
        if (ports.size() != 2 || !(otherOhms >= 0)) {
            throw new IllegalArgumentException("otherOhms is " + otherOhms + " on " + ports.size()
                    + " port(s); it must be 0 or more, and takes a sweep of two ports");
        }
        int other = 3 - requirePort(port);
        double reference = ports.get(other - 1).referenceOhms();
        double rho = Double.isInfinite(otherOhms) ? 1 : (otherOhms - reference) / (otherOhms + reference);
        ComplexBlock through = new ComplexBlock(count())
                .set(parameter(other, port))
                .times(new ComplexBlock(count()).set(parameter(port, other)))
                .times(rho);
        ComplexBlock far = new ComplexBlock(count()).set(reflection(other)).times(rho);
        return through.over(far.setOneMinus(far))
                .plus(new ComplexBlock(count()).set(reflection(port)))
                .copy();
    }

    @Override
    public String toString() {
        return "ScatteringSweep" + Arrays.toString(new double[] {hertz[0], hertz[hertz.length - 1]}) + ports;
    }
}
