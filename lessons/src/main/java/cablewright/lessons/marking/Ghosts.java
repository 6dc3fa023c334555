package cablewright.lessons.marking;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.BridgedTap;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.Sightings;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.network.SimulatedPort;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The re-reflections of a line that a reader may take for events: out to one place, back to a nearer one or to the port, out
 * again, and home; and what comes back from the end of a bridged tap.
 *
 * <p>A wave that meets i, k, j comes back at t(i) + t(j) − t(k), about h(i) h(j) h(k) high with h the heights that i, j
 * and k have on the trace: what the way to k and back takes is counted twice, so this is rather too low.
 */
final class Ghosts {

    /** The instrument, where its source does not match the line. */
    static final String PORT = "port";

    private static final int MOST_REFLECTORS = 24;

    private final List<Ghost> ghosts;

    private Ghosts(List<Ghost> ghosts) {
        this.ghosts = ghosts;
    }

    private record Reflector(String name, double seconds, double heightVolts) {}

    static Ghosts of(Demand demand, LineEnd end) {
        List<Reflector> reflectors = reflectors(demand, end);
        List<Reflector> turning = new ArrayList<>(reflectors);
        turning.add(port(demand.exercise(), end));
        List<Ghost> ghosts = new ArrayList<>();
        for (int i = 0; i < reflectors.size(); i++) {
            for (int j = i; j < reflectors.size(); j++) {
                for (Reflector nearer : turning) {
                    addPath(reflectors.get(i), nearer, reflectors.get(j), ghosts);
                }
            }
        }
        addBranches(demand, end, ghosts);
        return new Ghosts(ghosts);
    }

    private static void addPath(Reflector first, Reflector turn, Reflector second, List<Ghost> ghosts) {
        if (turn.seconds() >= first.seconds() || turn.seconds() >= second.seconds()) {
            return;
        }
        double ways = first.equals(second) ? 1 : 2;
        ghosts.add(new Ghost(
                List.of(first.name(), turn.name(), second.name()),
                first.seconds() + second.seconds() - turn.seconds(),
                ways * Math.abs(first.heightVolts() * turn.heightVolts() * second.heightVolts())));
    }

    private static void addBranches(Demand demand, LineEnd end, List<Ghost> ghosts) {
        for (LineEvent event : demand.events()) {
            Event real = demand.exercise().cable().event(event.eventId()).orElse(null);
            if (real instanceof BridgedTap) {
                Cable branch = ((BridgedTap) real).branch();
                double there =
                        demand.map(end).events().get(event.eventId()).nearer().seconds();
                double beyond = LineMap.of(branch, LineEnd.NEAR).endSeconds();
                ghosts.add(new Ghost(
                        List.of(event.eventId(), "end of " + event.eventId()),
                        there + beyond,
                        Math.abs(event.best().expectedVolts())));
            }
        }
    }

    private static List<Reflector> reflectors(Demand demand, LineEnd end) {
        List<Reflector> all = new ArrayList<>();
        for (LineEvent event : demand.events()) {
            if (!event.eventId().equals(Sightings.END_OF_LINE)) {
                LineMap.Stretch stretch = demand.map(end).events().get(event.eventId());
                all.add(new Reflector(
                        event.eventId(),
                        stretch.nearer().seconds(),
                        event.best().expectedVolts()));
            }
        }
        double endSeconds = demand.map(end).endSeconds();
        all.add(new Reflector(Sightings.END_OF_LINE, endSeconds, endHeight(demand.exercise(), end, endSeconds)));
        all.sort(Comparator.comparingDouble((Reflector r) -> -Math.abs(r.heightVolts()))
                .thenComparing(Reflector::name));
        return all.subList(0, Math.min(MOST_REFLECTORS, all.size()));
    }

    private static double endHeight(Exercise exercise, LineEnd end, double endSeconds) {
        Cable tested = tested(exercise, end);
        Settings settings = exercise.start().settings();
        Settings whole = settings.withRangeMetres(
                Math.min(200_000, Math.max(settings.rangeMetres(), 2 * settings.metresThereAndBack(endSeconds))));
        Trace trace = new Reflectometer(exercise.instrument())
                .withoutNoise(new SimulatedPort(tested, exercise.instrument().sourceOhms()), whole);
        double height = 0;
        double until = endSeconds + settings.stimulus().settledSeconds();
        for (int i = 0; i < trace.count() && trace.seconds(i) <= until; i++) {
            if (trace.seconds(i) >= endSeconds - settings.stimulus().halfHeightSeconds()) {
                height = Math.max(height, Math.abs(trace.volts(i)));
            }
        }
        return height;
    }

    private static Cable tested(Exercise exercise, LineEnd end) {
        return end == LineEnd.NEAR ? exercise.cable() : exercise.cable().seenFromFarEnd();
    }

    private static Reflector port(Exercise exercise, LineEnd end) {
        double line = tested(exercise, end).runs().get(0).type().section().impedanceOhms();
        double source = exercise.instrument().sourceOhms();
        return new Reflector(PORT, 0, (source - line) / (source + line));
    }

    /** Those that stand above a height, largest first. */
    List<Ghost> above(double volts) {
        return ghosts.stream()
                .filter(ghost -> ghost.heightVolts() >= volts)
                .sorted(Comparator.comparingDouble((Ghost ghost) -> -ghost.heightVolts())
                        .thenComparing(ghost -> ghost.path().toString()))
                .toList();
    }
}
