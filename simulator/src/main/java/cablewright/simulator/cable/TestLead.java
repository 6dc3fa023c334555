// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import cablewright.simulator.line.CableType;

/**
 * The lead between the instrument and the cable. It belongs to the measurement, not to the cable: positions don't count
 * it, but its length, its loss and its own mismatch are on every trace.
 *
 * @param type the type of cable that the lead is made of
 * @param lengthMetres its length [m], above 0 to 1000
 */
public record TestLead(
        CableType type,
        @Above(floor = 0, most = 1000) @Usual(from = 0.2, to = 20, byFactors = true) double lengthMetres) {

    /** Refuses a missing type and an impossible length. */
    public TestLead {
        Require.components(TestLead.class, type, lengthMetres);
    }
}
