// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.crosssection.CrossSection;

/** What closes a circuit. */
public sealed interface Load {

    /** Nothing: Γ = 1. */
    record Open() implements Load {}

    /** A contact: Γ = −1. */
    record Short() implements Load {}

    /**
     * A lumped load.
     *
     * @param part the load
     */
    record Part(Lumped part) implements Load {}

    /**
     * A line without end.
     *
     * @param section its cross-section
     */
    record Endless(CrossSection section) implements Load {}
}
