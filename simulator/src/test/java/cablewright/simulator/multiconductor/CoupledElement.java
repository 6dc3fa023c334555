// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.cable.Lumped;
import java.util.Arrays;
import java.util.Optional;

/** A piece of a coupled line. */
public sealed interface CoupledElement {

    /**
     * Counts the conductors.
     *
     * @return number of conductors, the reference not counted
     */
    int conductors();

    /**
     * A length of uniform line.
     *
     * @param line the line
     * @param metres its length, above 0 [m]
     */
    record Length(CoupledLine line, double metres) implements CoupledElement {

        // Refuses a length that can't be.
        public Length {
            if (!(metres > 0 && Double.isFinite(metres))) {
                throw new IllegalArgumentException("metres is " + metres + "; it must be greater than 0");
            }
        }

        @Override
        public int conductors() {
            return line.conductors();
        }
    }

    /**
     * A lumped part in one conductor: a corroded contact, or a wire broken through.
     *
     * @param conductor which, from 0
     * @param count how many conductors the line has
     * @param part the part; empty for a full break
     */
    record InConductor(int conductor, int count, Optional<Lumped> part) implements CoupledElement {

        // Refuses a conductor that isn't there.
        public InConductor {
            if (conductor < 0 || conductor >= count) {
                throw new IllegalArgumentException(
                        "conductor is " + conductor + "; the line has conductors 0 to " + (count - 1));
            }
        }

        @Override
        public int conductors() {
            return count;
        }
    }

    /**
     * A lumped part between two conductors, or between one and the reference: a leak or a contact.
     *
     * @param from a conductor, from 0
     * @param to another, or {@link Tie#REFERENCE}
     * @param count how many conductors the line has
     * @param part the part; it may be a small resistance, but none at all is not allowed
     */
    record Between(int from, int to, int count, Lumped part) implements CoupledElement {

        // Refuses conductors that aren't there, and parts of no impedance.
        public Between {
            if (from < 0 || from >= count || to < Tie.REFERENCE || to >= count || from == to) {
                throw new IllegalArgumentException("from is " + from + " and to is " + to
                        + "; they must be two conductors from 0 to " + (count - 1) + ", or one and the reference");
            }
            boolean resists =
                    part.resistanceOhms().isEmpty() || part.resistanceOhms().getAsDouble() > 0;
            boolean something = part.resistanceOhms().isPresent()
                    || part.inductanceHenries().isPresent()
                    || part.capacitanceFarads().isPresent();
            if (!resists || !something) {
                throw new IllegalArgumentException(
                        "part is " + part + "; a contact needs some resistance, such as 1e-6 ohm");
            }
        }

        @Override
        public int conductors() {
            return count;
        }
    }

    /** A joint of no length at which conductors go on as others. */
    final class Joint implements CoupledElement {

        private final int[] goesOnAs;

        /**
         * Makes a joint.
         *
         * @param goesOnAs for each conductor on the near side, which one it is on the far side
         */
        public Joint(int... goesOnAs) {
            this.goesOnAs = goesOnAs.clone();
            int[] sorted = goesOnAs.clone();
            Arrays.sort(sorted);
            for (int i = 0; i < sorted.length; i++) {
                if (sorted[i] != i) {
                    throw new IllegalArgumentException("goesOnAs is " + Arrays.toString(goesOnAs)
                            + "; each conductor from 0 to " + (sorted.length - 1) + " must stand in it once");
                }
            }
        }

        /**
         * Makes a split: the second wires of two pairs change places. The same joint again puts it right.
         *
         * @param pairs how many pairs the cable has, wires 2p and 2p + 1 being pair p
         * @param one one of the two pairs, from 0
         * @param other the other
         * @return the joint
         */
        public static Joint splitting(int pairs, int one, int other) {
            if (one < 0 || other < 0 || one >= pairs || other >= pairs || one == other) {
                throw new IllegalArgumentException("the pairs are " + one + " and " + other
                        + "; they must be two different ones from 0 to " + (pairs - 1));
            }
            int[] wires = new int[2 * pairs];
            Arrays.setAll(wires, i -> i);
            wires[2 * one + 1] = 2 * other + 1;
            wires[2 * other + 1] = 2 * one + 1;
            return new Joint(wires);
        }

        /**
         * Turns the joint round.
         *
         * @return the joint that puts every wire back
         */
        public Joint undone() {
            int[] back = new int[goesOnAs.length];
            for (int i = 0; i < back.length; i++) {
                back[goesOnAs[i]] = i;
            }
            return new Joint(back);
        }

        /**
         * Tells what becomes of a conductor.
         *
         * @param near conductor on the near side
         * @return which one it is on the far side
         */
        public int goesOnAs(int near) {
            return goesOnAs[near];
        }

        @Override
        public int conductors() {
            return goesOnAs.length;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Joint j && Arrays.equals(goesOnAs, j.goesOnAs);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(goesOnAs);
        }
    }
}
