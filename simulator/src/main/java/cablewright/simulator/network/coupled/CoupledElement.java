package cablewright.simulator.network.coupled;

import java.util.Arrays;

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
            return other instanceof Joint && Arrays.equals(goesOnAs, ((Joint) other).goesOnAs);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(goesOnAs);
        }
    }
}
