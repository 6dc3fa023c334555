// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.crosssection.CrossSection;

/** What closes a circuit. */
public sealed interface Load {

    /**
     * Calls the visitor's method for this kind of load.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(LoadVisitor<T> visitor);

    /** Nothing: Γ = 1. */
    record Open() implements Load {
        @Override
        public <T> T accept(LoadVisitor<T> visitor) {
            return visitor.open(this);
        }
    }

    /** A contact: Γ = −1. */
    record Short() implements Load {
        @Override
        public <T> T accept(LoadVisitor<T> visitor) {
            return visitor.shorted(this);
        }
    }

    /**
     * A lumped load.
     *
     * @param part the load
     */
    record Part(Lumped part) implements Load {
        @Override
        public <T> T accept(LoadVisitor<T> visitor) {
            return visitor.part(this);
        }
    }

    /**
     * A line without end.
     *
     * @param section its cross-section
     */
    record Endless(CrossSection section) implements Load {
        @Override
        public <T> T accept(LoadVisitor<T> visitor) {
            return visitor.endless(this);
        }
    }
}
