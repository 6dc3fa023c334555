// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.InlineComponent;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.solve.ProbeFilter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which places of which tracks lie on which element of a circuit. */
final class PlaceMap implements ProbeFilter {

    private static final double SAME_PLACE_METRES = 1e-9;

    private final Map<Integer, List<Place>> onLines = new HashMap<>();
    private final Map<Integer, PlaceMap> onBranches = new HashMap<>();
    private final List<Integer> atPort = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();

    /** A place by its number over all tracks, so many metres from the start of its line. */
    record Place(int number, double offsetMetres) {}

    private record Span(int element, double startMetres, double endMetres) {}

    private PlaceMap() {}

    /** Finds all places of tracks; they are numbered through, track after track. */
    static PlaceMap of(Cable cable, Network network, List<LinePlaces> tracks) {
        PlaceMap map = new PlaceMap();
        int number = 0;
        double port = -cable.testLead().map(TestLead::lengthMetres).orElse(0.0);
        for (LinePlaces track : tracks) {
            for (double metres : track.metres()) {
                if (track.branchIds().isEmpty() && Math.abs(metres - port) <= SAME_PLACE_METRES) {
                    map.atPort.add(number);
                } else {
                    map.add(cable, network, track.branchIds(), metres, number);
                }
                number++;
            }
        }
        return map;
    }

    /** Numbers of the places that are the port itself. */
    List<Integer> atPort() {
        return atPort;
    }

    /** Places on a line, nearest to its start first. */
    List<Place> places(int element) {
        return onLines.get(element).stream()
                .sorted(Comparator.comparingDouble(Place::offsetMetres))
                .toList();
    }

    @Override
    public boolean onLine(int element) {
        return onLines.containsKey(element);
    }

    @Override
    public PlaceMap onBranch(int element) {
        return onBranches.get(element);
    }

    private void add(Cable cable, Network network, List<String> branchIds, double metres, int number) {
        if (branchIds.isEmpty()) {
            addHere(cable, network, metres, number);
            return;
        }
        String id = branchIds.get(0);
        Cable branch = cable.event(id)
                .flatMap(PlaceMap::branchOf)
                .orElseThrow(() -> new IllegalArgumentException(
                        "branchIds names \"" + id + "\"; cable \"" + cable.title() + "\" has no branch of that name"));
        for (int i = 0; i < network.elements().size(); i++) {
            Element element = network.elements().get(i);
            if (element.madeBy().contains(id) && branchOf(element) != null) {
                onBranches
                        .computeIfAbsent(i, key -> new PlaceMap())
                        .add(branch, branchOf(element), branchIds.subList(1, branchIds.size()), metres, number);
            }
        }
    }

    private static Network branchOf(Element element) {
        if (element instanceof Element.Branch branch) {
            return branch.branch();
        }
        return element instanceof Element.Divider d ? d.leg() : null;
    }

    private static Optional<Cable> branchOf(Event event) {
        if (event instanceof BridgedTap tap) {
            return Optional.of(tap.branch());
        }
        return event instanceof Splitter s ? Optional.of(s.leg()) : Optional.empty();
    }

    private void addHere(Cable cable, Network network, double metres, int number) {
        if (spans.isEmpty()) {
            findSpans(cable, network);
        }
        Span last = spans.get(spans.size() - 1);
        double from = spans.get(0).startMetres();
        if (metres < from - SAME_PLACE_METRES || metres > last.endMetres() + SAME_PLACE_METRES) {
            throw new IllegalArgumentException("metres is " + metres + "; cable \"" + cable.title() + "\" goes from "
                    + from + " to " + last.endMetres() + " m");
        }
        Span chosen = last;
        int low = 0;
        int high = spans.size() - 1;
        while (low <= high) {
            int middle = (low + high) / 2;
            if (metres <= spans.get(middle).endMetres() + SAME_PLACE_METRES) {
                chosen = spans.get(middle);
                high = middle - 1;
            } else {
                low = middle + 1;
            }
        }
        double offset = Math.max(0, Math.min(chosen.endMetres(), metres) - chosen.startMetres());
        onLines.computeIfAbsent(chosen.element(), key -> new ArrayList<>()).add(new Place(number, offset));
    }

    /** Lines that have a length on the cable's own measure; the test lead lies below zero. */
    private void findSpans(Cable cable, Network network) {
        Set<String> things = new HashSet<>();
        cable.events().stream().filter(InlineComponent.class::isInstance).forEach(event -> things.add(event.id()));
        double end = -cable.testLead().map(TestLead::lengthMetres).orElse(0.0);
        for (int i = 0; i < network.elements().size(); i++) {
            Element element = network.elements().get(i);
            double length = lengthMetres(element);
            // A split stretch has its length whatever is put in the line within it.
            boolean ownLength = element instanceof Element.Split
                    || element.madeBy().stream().noneMatch(things::contains);
            if (length > 0 && ownLength) {
                double start = end;
                end += length;
                spans.add(new Span(i, start, end));
            }
        }
    }

    private static double lengthMetres(Element element) {
        if (element instanceof Element.Split split) {
            return split.lengthMetres();
        }
        return element instanceof Element.Line l ? l.lengthMetres() : 0;
    }
}
