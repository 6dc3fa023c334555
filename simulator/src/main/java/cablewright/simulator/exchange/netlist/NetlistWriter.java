// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.netlist;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ElementVisitor;
import cablewright.simulator.circuit.LineConstants;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Writes one netlist: walks the circuit from its port, one node after the other. Lossless lines have REL=4, so that no corner
 * of a wave makes the simulator stop for it again and again: the longest step is short enough for all.
 */
final class NetlistWriter implements ElementVisitor<Void> {

    /** Most elements in one netlist. */
    static final int MOST_ELEMENTS = 20_000;

    /** Keeps the end of an open line from hanging in the air; on any line its reflection is 1 within 1e-8. */
    private static final String NEARLY_OPEN = "1e12";

    /** A loss of amplitude this small is none. */
    private static final double NOTHING = 1e-9;

    private final NetlistSetup setup;
    private final StringBuilder text = new StringBuilder();
    private final Set<String> notices = new LinkedHashSet<>();
    private String node = "port";
    private int nodes;
    private int parts;
    private boolean cut;
    private boolean lossy;

    NetlistWriter(NetlistSetup setup) {
        this.setup = setup;
    }

    Netlist write(Network network) {
        if (network.size() > MOST_ELEMENTS) {
            throw new IllegalArgumentException("the line has " + network.size() + " elements; a netlist has at most "
                    + MOST_ELEMENTS + ": use a slower edge, or fewer or shorter events");
        }
        text.append(setup.title().isBlank() ? "line" : setup.title()).append('\n');
        text.append("* open voltage of the source: twice the outgoing wave of 1 V\n");
        NetlistSource.append(text, setup.stimulus(), setup.recordSeconds());
        text.append("Rsource emf port ").append(setup.sourceOhms()).append('\n');
        walk(network);
        text.append(".options reltol=1e-6 abstol=1e-12 vntol=1e-9 trtol=1\n");
        double step = setup.stepSeconds(lossy);
        text.append(".tran ").append(step).append(' ').append(setup.recordSeconds());
        text.append(" 0 ").append(step).append(" uic\n");
        text.append(".save v(port)\n.print tran v(port)\n.end\n");
        return new Netlist(text.toString(), notices.stream().toList());
    }

    private void walk(Network network) {
        for (Element element : network.elements()) {
            if (!cut) {
                element.accept(this);
            }
        }
        if (!cut) {
            end(network.load());
        }
    }

    private void end(Load load) {
        if (load instanceof Load.Open) {
            open();
        } else if (load instanceof Load.Short) {
            contact();
        } else if (load instanceof Load.Part part) {
            lumped(part.part(), node, "0");
        } else if (load instanceof Load.Endless endless) {
            endless(endless.section());
        }
    }

    private void open() {
        append("R", node, "0", NEARLY_OPEN);
    }

    private void contact() {
        append("V", node, "0", "0");
    }

    private void endless(CrossSection section) {
        LineConstants line = constants(section);
        if (!line.isLossless()) {
            leaveOut("the endless line at the end is represented by the resistance " + line.impedanceOhms()
                    + " ohms that it has without loss");
        }
        append("R", node, "0", Double.toString(line.impedanceOhms()));
    }

    private void append(String kind, String from, String to, String value) {
        text.append(kind).append(++parts).append(' ').append(from).append(' ').append(to);
        text.append(' ').append(value).append('\n');
    }

    private void leaveOut(String what) {
        text.append("* left out: ").append(what).append('\n');
        notices.add(Character.toUpperCase(what.charAt(0)) + what.substring(1) + ".");
    }

    private String nextNode() {
        return "n" + ++nodes;
    }

    private LineConstants constants(CrossSection section) {
        LineConstants line = LineConstants.near(section);
        if (LineConstants.exactly(section).isEmpty()) {
            leaveOut(String.format(
                    Locale.ROOT,
                    "loss that rises with frequency: a line of %.4g ohms is represented by its resistance at rest, %.4g ohms"
                            + " a metre, so edges stay steeper and pulses higher than they should",
                    line.impedanceOhms(),
                    line.resistanceOhmsPerMetre()));
        }
        return line;
    }

    @Override
    public Void line(Element.Line element) {
        LineConstants line = constants(element.section());
        String next = nextNode();
        if (line.resistanceOhmsPerMetre() == 0) {
            text.append("T")
                    .append(++parts)
                    .append(' ')
                    .append(node)
                    .append(" 0 ")
                    .append(next)
                    .append(" 0 Z0=");
            text.append(line.impedanceOhms()).append(" TD=");
            text.append(line.secondsPerMetre() * element.lengthMetres()).append(" REL=4\n");
        } else {
            lossy = true;
            text.append("O")
                    .append(++parts)
                    .append(' ')
                    .append(node)
                    .append(" 0 ")
                    .append(next);
            text.append(" 0 line")
                    .append(parts)
                    .append("\n.model line")
                    .append(parts)
                    .append(" LTRA(R=");
            text.append(line.resistanceOhmsPerMetre()).append(" L=").append(line.inductanceHenriesPerMetre());
            text.append(" G=0 C=").append(line.capacitanceFaradsPerMetre()).append(" LEN=");
            text.append(element.lengthMetres()).append(" REL=1 ABS=1)\n");
        }
        double leak = line.conductanceSiemensPerMetre() * element.lengthMetres() * line.impedanceOhms();
        if (leak > NOTHING) {
            leaveOut(String.format(
                    Locale.ROOT,
                    "a conductance of %.4g S a metre along a line of %.4g ohms, which these elements cannot carry",
                    line.conductanceSiemensPerMetre(),
                    line.impedanceOhms()));
        }
        node = next;
        return null;
    }

    @Override
    public Void series(Element.Series element) {
        if (isWire(element.part())) {
            return null;
        }
        String next = nextNode();
        lumped(element.part(), node, next);
        node = next;
        return null;
    }

    @Override
    public Void shunt(Element.Shunt element) {
        lumped(element.part(), node, "0");
        return null;
    }

    /** Recognises a part that is nothing but a wire: no resistance and no inductance where they alone would count. */
    private static boolean isWire(Lumped part) {
        boolean nothingR = part.resistanceOhms().orElse(0) == 0;
        boolean nothingL = part.inductanceHenries().orElse(0) == 0;
        if (part.joined() == Lumped.Joined.SERIES) {
            return nothingR && nothingL && part.capacitanceFarads().isEmpty();
        }
        return part.resistanceOhms().isPresent() && nothingR
                || part.inductanceHenries().isPresent() && nothingL;
    }

    private void lumped(Lumped part, String from, String to) {
        if (isWire(part)) {
            append("V", from, to, "0");
        } else if (part.joined() == Lumped.Joined.PARALLEL) {
            part.resistanceOhms().ifPresent(r -> append("R", from, to, Double.toString(r)));
            part.inductanceHenries().ifPresent(l -> append("L", from, to, Double.toString(l)));
            part.capacitanceFarads().ifPresent(c -> append("C", from, to, Double.toString(c)));
        } else {
            chain(part, from, to);
        }
    }

    /** Parts one after the other; those of no size are wires. */
    private void chain(Lumped part, String from, String to) {
        double r = part.resistanceOhms().orElse(0);
        double l = part.inductanceHenries().orElse(0);
        boolean hasC = part.capacitanceFarads().isPresent();
        String at = from;
        if (r > 0) {
            String next = l > 0 || hasC ? nextNode() : to;
            append("R", at, next, Double.toString(r));
            at = next;
        }
        if (l > 0) {
            String next = hasC ? nextNode() : to;
            append("L", at, next, Double.toString(l));
            at = next;
        }
        if (hasC) {
            append("C", at, to, Double.toString(part.capacitanceFarads().getAsDouble()));
        }
    }

    @Override
    public Void lineBreak(Element.Break element) {
        open();
        cut = true;
        return null;
    }

    @Override
    public Void contact(Element.Contact element) {
        contact();
        cut = true;
        return null;
    }

    @Override
    public Void branch(Element.Branch element) {
        String trunk = node;
        text.append("* a branch begins\n");
        walk(element.branch());
        text.append("* the branch ends\n");
        node = trunk;
        cut = false;
        return null;
    }

    @Override
    public Void divider(Element.Divider element) {
        leaveOut(String.format(
                Locale.ROOT,
                "an ideal divider matched to %.4g ohms and what hangs on its leg: the line goes straight through",
                element.impedanceOhms()));
        return null;
    }

    @Override
    public Void split(Element.Split element) {
        leaveOut(String.format(
                Locale.ROOT,
                "the neighbour with which the line is split over %.4g m, and what each hears of the other: the line goes on"
                        + " as if it were not split",
                element.lengthMetres()));
        for (Element inside : element.inside()) {
            if (!cut) {
                inside.accept(this);
            }
        }
        return null;
    }
}
