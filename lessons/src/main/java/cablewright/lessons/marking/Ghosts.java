// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.attribution.PathLeg;
import cablewright.simulator.explanation.attribution.Turn;
import cablewright.simulator.explanation.attribution.WavePath;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.paths.Reflector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a reader may take for an event at given settings: the ghosts of the line, and what comes back through its
 * branches.
 */
final class Ghosts {

    private final List<Ghost> ghosts;

    private Ghosts(List<Ghost> ghosts) {
        this.ghosts = ghosts;
    }

    static Ghosts of(AnswerKey demand, LineEnd end, Settings settings) {
        Exercise exercise = demand.exercise();
        return new Ghosts(Attribution.of(exercise.cable(), exercise.instrument(), settings, end).paths().stream()
                .filter(path -> path.isGhost() || path.isThroughBranch())
                .map(path -> new Ghost(met(path), path.arrivalSeconds(), path.peakVolts(), branchEnd(path)))
                .toList());
    }

    private static Optional<Ghost.BranchEnd> branchEnd(WavePath path) {
        Turn turn = path.turns().get(0);
        if (path.isGhost() || turn.branchIds().size() != 1 || !(turn.at() instanceof Reflector.EndOfBranch end)) {
            return Optional.empty();
        }
        double along = path.way().stream()
                .filter(leg -> !leg.branchIds().isEmpty())
                .mapToDouble(PathLeg::toMetres)
                .max()
                .orElse(0);
        return Optional.of(new Ghost.BranchEnd(end.jointId(), along));
    }

    /** What the wave met, with the joints by which it went into branches. */
    private static List<Reflector> met(WavePath path) {
        List<Reflector> met = new ArrayList<>();
        List<String> before = List.of();
        for (Turn turn : path.turns()) {
            for (int depth = 0; depth < turn.branchIds().size(); depth++) {
                if (before.size() <= depth
                        || !before.get(depth).equals(turn.branchIds().get(depth))) {
                    met.add(Reflector.event(turn.branchIds().get(depth)));
                }
            }
            met.add(turn.at());
            before = turn.cameBy();
        }
        return met;
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
