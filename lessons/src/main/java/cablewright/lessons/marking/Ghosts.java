package cablewright.lessons.marking;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.BridgedTap;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.Attribution;
import cablewright.simulator.instrument.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a reader may take for an event at given settings: the ghosts of the line, and what comes back from the end of a
 * bridged tap.
 */
final class Ghosts {

    /** The instrument, where its source does not match the line. */
    static final String PORT = "port";

    private final List<Ghost> ghosts;

    private Ghosts(List<Ghost> ghosts) {
        this.ghosts = ghosts;
    }

    static Ghosts of(Demand demand, LineEnd end, Settings settings) {
        Exercise exercise = demand.exercise();
        List<Ghost> ghosts = new ArrayList<>();
        Attribution.of(exercise.cable(), exercise.instrument(), settings, end)
                .ghosts(0)
                .forEach(path -> ghosts.add(new Ghost(named(path.turns()), path.arrivalSeconds(), path.peakVolts())));
        addBranches(demand, end, ghosts);
        return new Ghosts(ghosts);
    }

    private static List<String> named(List<String> turns) {
        return turns.stream()
                .map(turn -> turn.equals(Attribution.PORT) ? PORT : turn)
                .toList();
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
                        event.best().expectedVolts()));
            }
        }
    }

    /** Those that stand above a height, largest first. */
    List<Ghost> above(double volts) {
        return ghosts.stream()
                .filter(ghost -> Math.abs(ghost.heightVolts()) >= volts)
                .sorted(Comparator.comparingDouble((Ghost ghost) -> -Math.abs(ghost.heightVolts()))
                        .thenComparing(ghost -> ghost.path().toString()))
                .toList();
    }
}
