// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.InlineComponent;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ElementVisitor;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.solve.BlockWorkspace;
import cablewright.simulator.solve.EvenOddSection;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Builds the tree of a cable's scatterers, from the port outwards. */
final class ScatteringTreeBuilder {

    private final BlockWorkspace workspace;
    private final List<Scatterer> scatterers = new ArrayList<>();
    private final List<LineLeg> legs = new ArrayList<>();
    private final Deque<Shoot> waiting = new ArrayDeque<>();

    ScatteringTreeBuilder(Frequencies frequencies) {
        this.workspace = BlockWorkspace.of(frequencies);
    }

    /** A circuit on the way, with what of its cable is put in the line, and which branch it is. */
    private record Way(Network network, Cable cable, List<String> branchIds, Set<String> things) {

        static Way of(Network network, Cable cable, List<String> branchIds) {
            Set<String> things = new HashSet<>();
            cable.events().stream().filter(InlineComponent.class::isInstance).forEach(event -> things.add(event.id()));
            return new Way(network, cable, branchIds, things);
        }

        Way branch(String id, Network branch) {
            Event event = cable.event(id).orElseThrow();
            List<String> ids = new ArrayList<>(branchIds);
            ids.add(id);
            Cable there = event instanceof BridgedTap bt ? bt.branch() : ((Splitter) event).leg();
            return of(branch, there, List.copyOf(ids));
        }

        Element.Line line(int index) {
            return (Element.Line) network.elements().get(index);
        }

        boolean isInThing(Element element) {
            return element.madeBy().stream().anyMatch(things::contains);
        }

        /** A line is a leg unless it is inside a thing, or one of the steps of a profile. */
        boolean isLeg(int i) {
            Element element = network.elements().get(i);
            if (!(element instanceof Element.Line) || isInThing(element)) {
                return false;
            }
            return element.madeBy().isEmpty() || !(isStepOf(element, i - 1) || isStepOf(element, i + 1));
        }

        private boolean isStepOf(Element line, int other) {
            return other >= 0
                    && other < network.elements().size()
                    && network.elements().get(other) instanceof Element.Line
                    && network.elements().get(other).madeBy().equals(line.madeBy());
        }
    }

    /** Where a leg leaves an open end of a scatterer. */
    private record Shoot(int near, int nearPort, Way way, int leg, double metres) {}

    ScatteringTree grow(Cable cable, double sourceOhms, ProfileSteps steps) {
        Way way = Way.of(CableCompiler.compile(cable, steps), cable, List.of());
        double start = -cable.testLead().map(TestLead::lengthMetres).orElse(0.0);
        new Growing(ScatteringMatrix.on(sourceOhms, workspace), null, way, start).finish(0);
        while (!waiting.isEmpty()) {
            Shoot shoot = waiting.remove();
            Element.Line line = shoot.way().line(shoot.leg());
            double end = shoot.metres() + line.lengthMetres();
            legs.add(new LineLeg(
                    shoot.near(),
                    shoot.nearPort(),
                    scatterers.size(),
                    shoot.way().branchIds(),
                    shoot.metres(),
                    end,
                    frontSeconds(line),
                    workspace.wave(line.section()).decay(line.lengthMetres()).copy()));
            new Growing(ScatteringMatrix.on(line.section(), workspace), line, shoot.way(), end).finish(shoot.leg() + 1);
        }
        return new ScatteringTree(scatterers, legs);
    }

    private static double frontSeconds(Element.Line line) {
        return line.lengthMetres() / (line.section().velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
    }

    private static double frontSeconds(Element.Split split) {
        return split.inside().stream()
                .filter(Element.Line.class::isInstance)
                .mapToDouble(line -> frontSeconds((Element.Line) line))
                .sum();
    }

    /** A scatterer in the making. */
    private final class Growing {
        private final ScatteringMatrix ports;
        private final Element.Line before;
        private final Way own;
        private final double startMetres;
        private final Set<String> events = new TreeSet<>();
        private final List<Shoot> shoots = new ArrayList<>();
        private double endMetres;
        private boolean ended;

        Growing(ScatteringMatrix ports, Element.Line before, Way own, double startMetres) {
            this.ports = ports;
            this.before = before;
            this.own = own;
            this.startMetres = startMetres;
            this.endMetres = startMetres;
        }

        /** Goes on from an element of the way on which it lies, and keeps the scatterer when all open ends are known. */
        void finish(int from) {
            goOn(1, own, from, startMetres);
            Scatterer.Role role = role();
            events.remove(CableCompiler.TEST_LEAD);
            int number = scatterers.size();
            scatterers.add(Scatterer.of(role, events, own.branchIds(), startMetres, endMetres, ports));
            shoots.stream()
                    .map(shoot -> new Shoot(number, shoot.nearPort(), shoot.way(), shoot.leg(), shoot.metres()))
                    .forEach(waiting::add);
        }

        private Scatterer.Role role() {
            if (before == null) {
                return Scatterer.Role.PORT;
            }
            if (ended) {
                return Scatterer.Role.END;
            }
            boolean only = events.isEmpty() || events.equals(Set.of(CableCompiler.TEST_LEAD));
            return only ? Scatterer.Role.CABLE_CHANGE : Scatterer.Role.EVENT;
        }

        private boolean isOwn(Way way) {
            return way.branchIds().equals(own.branchIds());
        }

        /** Joins what comes at a port, up to the next leg or the load. */
        private void goOn(int port, Way way, int from, double metres) {
            double here = metres;
            List<Element> elements = way.network().elements();
            for (int i = from; i < elements.size(); i++) {
                Element element = elements.get(i);
                if (way.isLeg(i)) {
                    Element.Line leg = way.line(i);
                    ports.onto(port, leg.section());
                    shoots.add(new Shoot(-1, port, way, i, here));
                    end(way, here, leg.madeBy());
                    return;
                }
                if (isOwn(way)) {
                    events.addAll(element.madeBy());
                }
                here += lengthOf(way, element);
                if (isSplitForGood(element)) {
                    Network rest = new Network(
                            elements.subList(i, elements.size()), way.network().load());
                    CrossSection first =
                            EvenOddSection.first((Element.Split) element).section();
                    close(port, () -> ports.close(port, rest, first));
                    finishEnd(way, here);
                    return;
                }
                join(port, way, element);
            }
            close(port, () -> ports.close(port, way.network().load()));
            finishEnd(way, here);
        }

        private double lengthOf(Way way, Element element) {
            if (element instanceof Element.Split split) {
                return split.lengthMetres();
            }
            boolean counts = element instanceof Element.Line && !way.isInThing(element);
            return counts ? ((Element.Line) element).lengthMetres() : 0;
        }

        private boolean isSplitForGood(Element element) {
            return element instanceof Element.Split s && s.neighbourFar().isEmpty();
        }

        private void finishEnd(Way way, double here) {
            ended |= isOwn(way);
            end(way, here, before == null ? Set.of() : before.madeBy());
        }

        /** What only one of the two sides has makes the place too. */
        private void end(Way way, double here, Set<String> after) {
            if (!isOwn(way)) {
                return;
            }
            endMetres = here;
            Set<String> left = before == null ? Set.of() : before.madeBy();
            left.stream().filter(id -> !after.contains(id)).forEach(events::add);
            after.stream().filter(id -> !left.contains(id)).forEach(events::add);
        }

        /** Closes a port and counts those after it anew. */
        private void close(int port, Runnable closing) {
            closing.run();
            shoots.replaceAll(shoot -> shoot.nearPort() < port
                    ? shoot
                    : new Shoot(-1, shoot.nearPort() - 1, shoot.way(), shoot.leg(), shoot.metres()));
        }

        private void join(int port, Way way, Element element) {
            element.accept(new Joiner(port, way));
        }

        private String idOf(Element element) {
            return element.madeBy().iterator().next();
        }

        /** Joins an element at a port. */
        private final class Joiner implements ElementVisitor<Void> {
            private final int port;
            private final Way way;

            Joiner(int port, Way way) {
                this.port = port;
                this.way = way;
            }

            @Override
            public Void line(Element.Line line) {
                ports.line(port, line, frontSeconds(line));
                return null;
            }

            @Override
            public Void series(Element.Series series) {
                ports.series(port, series);
                return null;
            }

            @Override
            public Void shunt(Element.Shunt shunt) {
                ports.shunt(port, shunt);
                return null;
            }

            @Override
            public Void lineBreak(Element.Break lineBreak) {
                ports.wall(port, 1);
                return null;
            }

            @Override
            public Void contact(Element.Contact contact) {
                ports.wall(port, -1);
                return null;
            }

            @Override
            public Void branch(Element.Branch branch) {
                goOn(ports.branch(port), way.branch(idOf(branch), branch.branch()), 0, 0);
                return null;
            }

            @Override
            public Void divider(Element.Divider divider) {
                goOn(ports.divider(port, divider), way.branch(idOf(divider), divider.leg()), 0, 0);
                return null;
            }

            @Override
            public Void split(Element.Split split) {
                ports.split(port, split, frontSeconds(split));
                return null;
            }
        }
    }
}
