// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.ladder;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ElementVisitor;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Lays the nodes of a circuit of lumped parts and what lies between them. Node 0 is the port; nodes that a wire joins to
 * ground are ground.
 */
final class NodeList implements ElementVisitor<Void> {

    /** Parts in series between two nodes; absent ones are 0, also the reciprocal of a capacitance. */
    private record Between(int from, int to, double ohms, double henries, double perFarad) {}

    private final List<Between> parts = new ArrayList<>();
    private final Set<Integer> grounded = new HashSet<>();
    private int node;
    private int nodes = 1;
    private boolean cut;

    NodeList(Network lumped) {
        walk(lumped);
    }

    /** Numbers for the nodes that are not ground, in the order in which they were laid. */
    private int[] numbers() {
        int[] numbers = new int[nodes];
        int next = 0;
        for (int i = 0; i < nodes; i++) {
            numbers[i] = grounded.contains(i) ? Companion.GROUND : next++;
        }
        return numbers;
    }

    /** How many nodes are not ground. */
    int count() {
        return nodes - grounded.size();
    }

    /** Whether a wire joins the port to ground, so that nothing else counts. */
    boolean isPortShorted() {
        return grounded.contains(0);
    }

    List<Companion> companions(double stepSeconds) {
        int[] numbers = numbers();
        List<Companion> companions = new ArrayList<>();
        for (Between part : parts) {
            int from = part.from() == Companion.GROUND ? Companion.GROUND : numbers[part.from()];
            int to = part.to() == Companion.GROUND ? Companion.GROUND : numbers[part.to()];
            companions.add(new Companion(from, to, part.ohms(), part.henries(), part.perFarad(), stepSeconds));
        }
        return companions;
    }

    private void walk(Network network) {
        for (Element element : network.elements()) {
            if (!cut) {
                element.accept(this);
            }
        }
        if (!cut && network.load() instanceof Load.Short) {
            ground();
        } else if (!cut && network.load() instanceof Load.Part) {
            add(((Load.Part) network.load()).part(), node, Companion.GROUND);
        }
    }

    private void ground() {
        grounded.add(node);
    }

    /** Parts side by side lie side by side; a wire to ground makes its node ground. */
    private void add(Lumped part, int from, int to) {
        if (isWire(part)) {
            ground();
        } else if (part.joined() == Lumped.Joined.SERIES) {
            double perFarad = part.capacitanceFarads().isPresent()
                    ? 1 / part.capacitanceFarads().getAsDouble()
                    : 0;
            double ohms = part.resistanceOhms().orElse(0);
            parts.add(new Between(from, to, ohms, part.inductanceHenries().orElse(0), perFarad));
        } else {
            part.resistanceOhms().ifPresent(x -> parts.add(new Between(from, to, x, 0, 0)));
            part.inductanceHenries().ifPresent(x -> parts.add(new Between(from, to, 0, x, 0)));
            part.capacitanceFarads().ifPresent(x -> parts.add(new Between(from, to, 0, 0, 1 / x)));
        }
    }

    private static boolean isWire(Lumped part) {
        double r = part.resistanceOhms().orElse(1);
        double l = part.inductanceHenries().orElse(1);
        if (part.joined() == Lumped.Joined.PARALLEL) {
            return r == 0 || l == 0;
        }
        return part.resistanceOhms().orElse(0) == 0
                && part.inductanceHenries().orElse(0) == 0
                && part.capacitanceFarads().isEmpty();
    }

    @Override
    public Void series(Element.Series element) {
        if (!isWire(element.part())) {
            int next = nodes++;
            add(element.part(), node, next);
            node = next;
        }
        return null;
    }

    @Override
    public Void shunt(Element.Shunt element) {
        add(element.part(), node, Companion.GROUND);
        cut = cut || isWire(element.part());
        return null;
    }

    @Override
    public Void lineBreak(Element.Break element) {
        cut = true;
        return null;
    }

    @Override
    public Void contact(Element.Contact element) {
        ground();
        cut = true;
        return null;
    }

    @Override
    public Void branch(Element.Branch element) {
        int trunk = node;
        walk(element.branch());
        node = trunk;
        cut = false;
        return null;
    }

    @Override
    public Void line(Element.Line element) {
        throw new IllegalArgumentException("a line of " + element.lengthMetres() + " m is still a line");
    }

    @Override
    public Void divider(Element.Divider element) {
        throw new IllegalArgumentException("an ideal divider has no lumped parts");
    }

    @Override
    public Void split(Element.Split element) {
        throw new IllegalArgumentException("a stretch shared with a neighbour is no ladder of one line");
    }
}
