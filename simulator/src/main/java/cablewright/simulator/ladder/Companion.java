// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.ladder;

/**
 * R, L and C in series between two nodes, over one step h of the trapezoidal rule: i = (v − e)/Z with
 * Z = R + 2L/h + h/(2C), where e holds what is known from the step before:
 * e = v_C + (h/(2C) − 2L/h) i − v_L.
 *
 * <p>Source: L. W. Nagel, SPICE2: A Computer Program to Simulate Semiconductor Circuits, UCB/ERL M520 (1975), on companion
 * models, from memory.
 */
final class Companion {

    /** The node that is always at 0 V. */
    static final int GROUND = -1;

    private final int from;
    private final int to;
    private final double conductance;
    private final double ofInductance;
    private final double ofCapacitance;
    private double current;
    private double inductorVolts;
    private double capacitorVolts;
    private double known;

    /** L or 1/C is 0 where there is none. */
    Companion(int from, int to, double ohms, double henries, double perFarad, double stepSeconds) {
        this.from = from;
        this.to = to;
        this.ofInductance = 2 * henries / stepSeconds;
        this.ofCapacitance = stepSeconds * perFarad / 2;
        this.conductance = 1 / (ohms + ofInductance + ofCapacitance);
    }

    int from() {
        return from;
    }

    int to() {
        return to;
    }

    double conductance() {
        return conductance;
    }

    /** Works out what is known before a step and adds its current to the right side. */
    void prepare(double[] right) {
        known = capacitorVolts + (ofCapacitance - ofInductance) * current - inductorVolts;
        if (from != GROUND) {
            right[from] += conductance * known;
        }
        if (to != GROUND) {
            right[to] -= conductance * known;
        }
    }

    /** Takes the voltages after the step. */
    void step(double[] volts) {
        double across = (from == GROUND ? 0 : volts[from]) - (to == GROUND ? 0 : volts[to]);
        double next = conductance * (across - known);
        inductorVolts = ofInductance * (next - current) - inductorVolts;
        capacitorVolts += ofCapacitance * (next + current);
        current = next;
    }

    void rest() {
        current = 0;
        inductorVolts = 0;
        capacitorVolts = 0;
    }
}
