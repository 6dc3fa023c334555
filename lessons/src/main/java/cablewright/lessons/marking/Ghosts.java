// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.attribution.PathLeg;
import cablewright.simulator.explanation.attribution.Turn;
import cablewright.simulator.explanation.attribution.WavePath;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a reader may take for an event at given settings: the ghosts of the line, and what comes back through its
 * branches.
 */
final class Ghosts {

    /** The instrument, where its source does not match the line. */
    static final String PORT = "port";

    /** What comes before the name of a branch's joint in the name of its end. */
    static final String END_OF = "end of ";

    private final List<Ghost> ghosts;

    private Ghosts(List<Ghost> ghosts) {
        this.ghosts = ghosts;
    }

    static Ghosts of(AnswerKey demand, LineEnd end, Settings settings) {
        Exercise exercise = demand.exercise();
        return new Ghosts(Attribution.of(exercise.cable(), exercise.instrument(), settings, end).paths().stream()
                .filter(path -> path.isGhost() || path.isThroughBranch())
                .map(path -> new Ghost(named(path), path.arrivalSeconds(), path.peakVolts(), branchEnd(path)))
                .toList());
    }

    private static Optional<Ghost.BranchEnd> branchEnd(WavePath path) {
        Turn turn = path.turns().get(0);
        boolean end = !path.isGhost()
                && turn.name().equals(VisibilityAnalysis.END_OF_LINE)
                && turn.branchIds().size() == 1;
        double along = path.way().stream()
                .filter(leg -> !leg.branchIds().isEmpty())
                .mapToDouble(PathLeg::toMetres)
                .max()
                .orElse(0);
        return end ? Optional.of(new Ghost.BranchEnd(turn.branchIds().get(0), along)) : Optional.empty();
    }

    /** What the wave met, with the joints by which it went into branches. */
    private static List<String> named(WavePath path) {
        List<String> names = new ArrayList<>();
        List<String> before = List.of();
        for (Turn turn : path.turns()) {
            for (int depth = 0; depth < turn.branchIds().size(); depth++) {
                if (before.size() <= depth
                        || !before.get(depth).equals(turn.branchIds().get(depth))) {
                    names.add(turn.branchIds().get(depth));
                }
            }
            names.add(name(turn));
            before = turn.cameBy();
        }
        return names;
    }

    private static String name(Turn turn) {
        if (turn.name().equals(VisibilityAnalysis.END_OF_LINE) && turn.inBranch()) {
            return END_OF + turn.branchIds().get(turn.branchIds().size() - 1);
        }
        return turn.name().equals(Attribution.PORT) ? PORT : turn.name();
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
