// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.compile;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.hardware.InlineComponent;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes the circuit of a cable: cuts at every boundary, takes profiles in steps, applies the conditions that overlap in
 * their order, merges equal neighbours, and keeps for each piece which events made it.
 *
 * <p>A profile is taken in steps at their middles, put right to second order by {@link SmoothSteps}; {@link ProfileSteps} finds
 * how many keep the error small.
 */
public final class CableCompiler {

    /** Most pieces of line in one circuit. */
    public static final int MOST_PIECES = 200_000;

    /** The name under which a piece of test lead is kept; no event can have it. */
    public static final String TEST_LEAD = "test lead";

    private static final double SAME_PLACE_METRES = 1e-9;
    private static final int PROBES = 24;

    private final Cable cable;
    private final ProfileSteps steps;
    private final double length;
    private List<Element> elements = new ArrayList<>();
    private List<Element> beforeSplit = List.of();
    private final Map<LineCondition, SmoothSteps> smooth = new IdentityHashMap<>();
    private Split open;

    private CableCompiler(Cable cable, ProfileSteps steps) {
        this.cable = cable;
        this.steps = steps;
        this.length = cable.lengthMetres();
    }

    /**
     * Makes the circuit of a cable as seen from its near end, for a sweep.
     *
     * @param cable the cable
     * @param topHertz highest frequency at which the circuit is to serve [Hz]; finer steps serve higher
     * @return the circuit
     * @throws IllegalArgumentException as the other one
     */
    public static Network compile(Cable cable, double topHertz) {
        return compile(cable, ProfileSteps.forSweepTo(topHertz));
    }

    /**
     * Makes the circuit of a cable as seen from its near end.
     *
     * @param cable the cable
     * @param steps how finely its profiles are taken
     * @return the circuit
     * @throws IllegalArgumentException if a condition can't be done to the cable where it lies, or the circuit would have
     *     more than {@value #MOST_PIECES} pieces
     */
    public static Network compile(Cable cable, ProfileSteps steps) {
        return new CableCompiler(cable, steps).run();
    }

    private Network run() {
        cable.testLead()
                .ifPresent(lead -> elements.add(
                        new Element.Line(at(lead.type().section()), lead.lengthMetres(), Set.of(TEST_LEAD))));
        List<LineCondition> conditions = sorted(LineCondition.class);
        List<InlineComponent> things = sorted(InlineComponent.class);
        List<Double> cuts = cuts(conditions);
        HardwareElements hardware = new HardwareElements(cable, steps);
        List<LineCondition> active = new ArrayList<>();
        int nextThing = 0;
        int nextCondition = 0;
        RunCursor runs = new RunCursor(cable.runs());
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double from = cuts.get(i);
            double to = cuts.get(i + 1);
            closeSplitBefore(from + SAME_PLACE_METRES);
            while (nextThing < things.size() && things.get(nextThing).positionMetres() <= from + SAME_PLACE_METRES) {
                elements.addAll(hardware.of(things.get(nextThing++)));
            }
            while (nextCondition < conditions.size()
                    && conditions.get(nextCondition).startMetres() <= from + SAME_PLACE_METRES) {
                LineCondition condition = conditions.get(nextCondition++);
                active.add(condition);
                if (condition instanceof Split split) {
                    openSplit(split);
                }
            }
            active.removeIf(condition -> condition.endMetres() <= from + SAME_PLACE_METRES);
            addPiece(runs.at((from + to) / 2), active, from, to);
        }
        // What stands at the end of a split that is never put right stands in the split circuit.
        boolean within = open != null && !open.putRight();
        if (!within) {
            closeSplitBefore(Double.POSITIVE_INFINITY);
        }
        while (nextThing < things.size()) {
            elements.addAll(hardware.of(things.get(nextThing++)));
        }
        closeSplitBefore(Double.POSITIVE_INFINITY);
        return new Network(elements, load());
    }

    private void openSplit(Split split) {
        open = split;
        beforeSplit = elements;
        elements = new ArrayList<>();
    }

    private void closeSplitBefore(double place) {
        if (open == null || open.endMetres() > place) {
            return;
        }
        NeighbourLine neighbour = new NeighbourLine(cable);
        Optional<Network> far = open.putRight()
                ? Optional.of(neighbour.onwardFrom(open.endMetres(), open.neighbourFarEnd()))
                : Optional.empty();
        Set<String> madeBy = new LinkedHashSet<>();
        elements.forEach(element -> madeBy.addAll(element.madeBy()));
        Network near = neighbour.backFrom(open.startMetres(), open.neighbourNearEnd());
        beforeSplit.add(new Element.Split(elements, open.shape(), near, far, Set.copyOf(madeBy)));
        elements = beforeSplit;
        open = null;
    }

    private <E extends Event> List<E> sorted(Class<E> family) {
        return cable.events().stream()
                .filter(family::isInstance)
                .map(family::cast)
                .sorted(Comparator.comparingDouble(Event::startMetres))
                .toList();
    }

    private CrossSection at(CrossSection section) {
        return cable.celsius() == Cable.BASE_CELSIUS ? section : section.atTemperature(cable.celsius());
    }

    private List<Double> cuts(List<LineCondition> conditions) {
        TreeSet<Double> places = new TreeSet<>();
        places.add(0.0);
        double end = 0;
        for (Run run : cable.runs()) {
            end += run.lengthMetres();
            places.add(Math.min(end, length));
        }
        for (Event event : cable.events()) {
            places.add(Math.min(event.startMetres(), length));
        }
        for (LineCondition condition : conditions) {
            addSteps(places, condition);
        }
        List<Double> cuts = new ArrayList<>();
        for (double place : places) {
            if (cuts.isEmpty() || place - cuts.get(cuts.size() - 1) > SAME_PLACE_METRES) {
                cuts.add(place);
            }
        }
        return cuts;
    }

    private void addSteps(TreeSet<Double> places, LineCondition condition) {
        double step = condition.longestStepMetres();
        int count = 1;
        if (Double.isFinite(step)) {
            CrossSection section =
                    at(cable.runAt(condition.startMetres()).type().section());
            double metres = condition.lengthMetres();
            double needed = steps.longestMetres(metres, variation(condition, section), section.velocityFraction());
            // An even number: the top of a triangle falls between two steps.
            double wanted = 2 * Math.ceil(metres / Math.min(step, needed) / 2);
            if (wanted + places.size() > MOST_PIECES) {
                throw new IllegalArgumentException("event \"" + condition.id() + "\" over " + condition.lengthMetres()
                        + " m would take " + (long) wanted + " pieces at this pulse width; at most " + MOST_PIECES
                        + " are allowed: use a wider pulse, a longer pitch or a shorter stretch");
            }
            count = (int) wanted;
            if (steps.areSecondOrder()) {
                smooth.put(condition, new SmoothSteps(condition, section, count));
            }
        }
        for (int i = 1; i <= count; i++) {
            double place = condition.startMetres() + condition.lengthMetres() * i / count;
            places.add(Math.min(place, length));
        }
    }

    /**
     * Half of the total variation of ln Z that a condition makes by itself, from a few places along it; next to none for one
     * that swings faster than that, whose own step then decides.
     */
    private static double variation(LineCondition condition, CrossSection section) {
        if (condition.longestStepMetres() < condition.lengthMetres() / PROBES) {
            return Double.MIN_NORMAL;
        }
        double sum = 0;
        double before = Math.log(section.impedanceOhms());
        for (int i = 0; i <= PROBES; i++) {
            double depth = condition.depthAt((double) i / PROBES);
            double here = Math.log(applied(condition, section, depth).impedanceOhms());
            sum += Math.abs(here - before) / 2;
            before = here;
        }
        return sum + Math.abs(Math.log(section.impedanceOhms()) - before) / 2;
    }

    private void addPiece(Run run, List<LineCondition> active, double from, double to) {
        CrossSection section = at(run.type().section());
        Set<String> madeBy = new LinkedHashSet<>();
        List<LineCondition> ordered = active.size() < 2
                ? active
                : active.stream()
                        .sorted(Comparator.comparingInt(LineCondition::compositionOrder))
                        .toList();
        for (LineCondition condition : ordered) {
            double along = ((from + to) / 2 - condition.startMetres()) / condition.lengthMetres();
            SmoothSteps smoothed = smooth.get(condition);
            section = smoothed == null
                    ? applied(condition, section, condition.depthAt(along))
                    : smoothed.applyTo(section, along);
            madeBy.add(condition.id());
        }
        addLine(section, to - from, madeBy);
    }

    static CrossSection applied(LineCondition condition, CrossSection section, double depth) {
        try {
            return condition.applyTo(section, depth);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("event \"" + condition.id() + "\": " + e.getMessage(), e);
        }
    }

    private void addLine(CrossSection section, double metres, Set<String> madeBy) {
        int last = elements.size() - 1;
        if (last >= 0 && elements.get(last) instanceof Element.Line) {
            Element.Line before = (Element.Line) elements.get(last);
            if (before.section().equals(section) && before.madeBy().equals(madeBy)) {
                elements.set(last, new Element.Line(section, before.lengthMetres() + metres, before.madeBy()));
                return;
            }
        }
        elements.add(new Element.Line(section, metres, Set.copyOf(madeBy)));
    }

    private Load load() {
        FarEnd end = cable.farEnd();
        if (end instanceof FarEnd.Open) {
            return new Load.Open();
        }
        if (end instanceof FarEnd.Short) {
            return new Load.Short();
        }
        if (end instanceof FarEnd.Endless endless) {
            return new Load.Endless(at(endless.type().section()));
        }
        return new Load.Part(((FarEnd.Terminated) end).load());
    }

    /** Finds the run of places that are asked for in order. */
    private static final class RunCursor {
        private final List<Run> runs;
        private int index;
        private double end;

        RunCursor(List<Run> runs) {
            this.runs = runs;
            this.end = runs.get(0).lengthMetres();
        }

        Run at(double place) {
            while (place > end && index + 1 < runs.size()) {
                end += runs.get(++index).lengthMetres();
            }
            return runs.get(index);
        }
    }
}
