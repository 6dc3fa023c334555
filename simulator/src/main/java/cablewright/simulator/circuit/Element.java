// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.split.SplitShape;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One element of a circuit, as the wave meets it. Each keeps the names of the events that made it. */
public sealed interface Element {

    /**
     * Returns the names of the events but for which the element would be another or none.
     *
     * @return event names; empty for plain cable
     */
    Set<String> madeBy();

    /**
     * Calls the visitor's method for this kind of element.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(ElementVisitor<T> visitor);

    /**
     * A length of uniform line.
     *
     * @param section its cross-section
     * @param lengthMetres its length [m]
     * @param madeBy names of the events that made it
     */
    record Line(CrossSection section, double lengthMetres, Set<String> madeBy) implements Element {
        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.line(this);
        }
    }

    /**
     * A lumped element in series with the line.
     *
     * @param part the element
     * @param madeBy names of the events that made it
     */
    record Series(Lumped part, Set<String> madeBy) implements Element {
        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.series(this);
        }
    }

    /**
     * A lumped element across the line.
     *
     * @param part the element
     * @param madeBy names of the events that made it
     */
    record Shunt(Lumped part, Set<String> madeBy) implements Element {
        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.shunt(this);
        }
    }

    /**
     * A conductor broken through: everything comes back, nothing goes on.
     *
     * @param madeBy names of the events that made it
     */
    record Break(Set<String> madeBy) implements Element {
        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.lineBreak(this);
        }
    }

    /**
     * Conductors touching: everything comes back inverted, nothing goes on.
     *
     * @param madeBy names of the events that made it
     */
    record Contact(Set<String> madeBy) implements Element {
        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.contact(this);
        }
    }

    /**
     * A branch joined across the line.
     *
     * @param branch the branch's own circuit
     * @param madeBy names of the events that made it
     */
    record Branch(Network branch, Set<String> madeBy) implements Element {
        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.branch(this);
        }
    }

    /**
     * An ideal matched divider with isolated legs: Γ = t²Γthrough + u²Γleg, all on the divider's impedance.
     *
     * @param impedanceOhms the impedance on which it is matched [Ω]
     * @param throughAmplitude t, from input to the leg in which the line goes on, 0 to 1
     * @param legAmplitude u, from input to the other leg, 0 to 1
     * @param leg the circuit on the other leg
     * @param madeBy names of the events that made it
     */
    record Divider(double impedanceOhms, double throughAmplitude, double legAmplitude, Network leg, Set<String> madeBy)
            implements Element {
        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.divider(this);
        }
    }

    /**
     * A stretch over which the line shares its field with a neighbour: two circuits of like wires in an even and an odd mode.
     * What stands inside stands in the line's own circuit, evenly in its two wires.
     *
     * @param inside lines as they would be unsplit, and what is put in them
     * @param shape how the wires lie, from which the modes follow
     * @param neighbourNear the neighbour from the start of the stretch back to its near end
     * @param neighbourFar the neighbour from the end of the stretch onward; empty where the split is never put right, and
     *     then both pairs end in the load of the circuit
     * @param madeBy names of the events that made it
     */
    record Split(
            List<Element> inside,
            SplitShape shape,
            Network neighbourNear,
            Optional<Network> neighbourFar,
            Set<String> madeBy)
            implements Element {

        // Keeps its own list.
        public Split {
            inside = List.copyOf(inside);
        }

        /**
         * Returns how long the stretch is.
         *
         * @return length of all lines inside [m]
         */
        public double lengthMetres() {
            return inside.stream()
                    .filter(Line.class::isInstance)
                    .mapToDouble(element -> ((Line) element).lengthMetres())
                    .sum();
        }

        /**
         * Turns the stretch round.
         *
         * @return the same as met from its far side
         */
        public Split turned() {
            List<Element> back = new ArrayList<>(inside);
            Collections.reverse(back);
            return new Split(back, shape, neighbourFar.orElseThrow(), Optional.of(neighbourNear), madeBy);
        }

        @Override
        public <T> T accept(ElementVisitor<T> visitor) {
            return visitor.split(this);
        }
    }
}
