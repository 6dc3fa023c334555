// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable;

import cablewright.simulator.check.Require;
import cablewright.simulator.line.CableType;

/** What a line ends in. */
public sealed interface FarEnd {

    /** Nothing is joined: the wave comes back upright. */
    record Open() implements FarEnd {}

    /** The conductors touch: the wave comes back inverted. */
    record Short() implements FarEnd {}

    /**
     * A lumped load, such as a terminating resistor, or an antenna-like resistor and capacitor.
     *
     * @param load the load across the conductors
     */
    record Terminated(Lumped load) implements FarEnd {
        /** Refuses a missing load. */
        public Terminated {
            Require.components(Terminated.class, load);
        }

        /**
         * Makes an end closed by a resistor.
         *
         * @param ohms resistance [Ω]
         * @return the end
         */
        public static Terminated byOhms(double ohms) {
            return new Terminated(Lumped.resistor(ohms));
        }
    }

    /**
     * A cable that goes on without end: nothing that enters it comes back.
     *
     * @param type the type of the endless cable
     */
    record Endless(CableType type) implements FarEnd {
        /** Refuses a missing type. */
        public Endless {
            Require.components(Endless.class, type);
        }
    }
}
