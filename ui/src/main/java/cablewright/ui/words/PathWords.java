// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.explanation.attribution.Bump;
import cablewright.simulator.explanation.attribution.Turn;
import cablewright.simulator.explanation.attribution.WavePath;
import cablewright.simulator.paths.Reflector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Describes the path of a wave. */
public final class PathWords {

    private static final int MOST_SHARES = 3;

    private final Words words;
    private final Cable cable;

    /**
     * Describes the paths of a cable.
     *
     * @param words the words
     * @param cable the cable, with distances from its near end
     */
    public PathWords(Words words, Cable cable) {
        this.words = words;
        this.cable = cable;
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    /**
     * Returns where the wave turned round, in order.
     *
     * @param path the path
     * @return such as "the splice at 31.0 m, then the tap at 12.0 m, then the splice at 31.0 m"
     */
    public String description(WavePath path) {
        String way = path.turns().stream()
                .map(this::turn)
                .reduce((before, after) -> say("path.then", before, after))
                .orElseThrow();
        return path.orders() > 1 ? say("path.orders", way, Math.round(path.orders())) : way;
    }

    /**
     * Names a place where a wave turned.
     *
     * @param turn the turn
     * @return such as "the open at 12.0 m of the branch at 40.0 m"
     */
    public String turn(Turn turn) {
        if (!turn.cameBy().equals(turn.branchIds())) {
            return say("sight.fromInside", branch(turn.cameBy()));
        }
        if (turn.at() instanceof Reflector.EndOfBranch) {
            return say("sight.endOfBranch", branch(turn.branchIds()));
        }
        String place = new VisibilityWords(words, cableOf(turn.branchIds())).name(turn.at());
        return turn.branchIds().isEmpty() ? place : say("sight.inBranch", place, branch(turn.branchIds()));
    }

    /**
     * Names the events that cause a peak or dip of a trace.
     *
     * @param bump the extremum
     * @return such as "at 31.0 m, up by 3.1 %: the splice at 31.0 m +3.0 %"
     */
    public String bump(Bump bump) {
        List<String> whose = new ArrayList<>();
        bump.shares().stream()
                .limit(MOST_SHARES)
                .forEach(share -> whose.add(say(
                        "bump.share",
                        description(share.path()),
                        words.quantities().percent(share.volts()))));
        if (bump.shares().size() > MOST_SHARES) {
            whose.add(say("bump.more", bump.shares().size() - MOST_SHARES));
        }
        boolean noise = bump.isRestWithinNoise();
        if (bump.shares().isEmpty()) {
            whose.add(say(noise ? "bump.noise" : "bump.unexplained"));
        } else if (!bump.isExplained()) {
            whose.add(say(noise ? "bump.partlyNoise" : "bump.partly", unsigned(bump.unexplainedVolts())));
        }
        return say(
                "bump.line",
                words.quantities().length(bump.shownMetres()),
                say(bump.standsOutVolts() < 0 ? "word.down" : "word.up"),
                unsigned(bump.standsOutVolts()),
                String.join("; ", whose));
    }

    private String unsigned(double share) {
        return words.quantities().percent(Math.abs(share)).replace("+", "");
    }

    /** Names a branch by where it leaves, from the line outwards. */
    private String branch(List<String> ids) {
        String of = "";
        Cable here = cable;
        for (String id : ids) {
            String at = here.event(id)
                    .map(it -> words.quantities().length(it.startMetres()))
                    .orElse(id);
            of = of.isEmpty() ? say("sight.branch", at) : say("sight.branchOf", at, of);
            here = branch(here, id).orElse(here);
        }
        return of;
    }

    private Cable cableOf(List<String> ids) {
        Cable here = cable;
        for (String id : ids) {
            here = branch(here, id).orElse(here);
        }
        return here;
    }

    private static Optional<Cable> branch(Cable here, String id) {
        Event event = here.event(id).orElse(null);
        if (event instanceof BridgedTap tap) {
            return Optional.of(tap.branch());
        }
        return event instanceof Splitter s ? Optional.of(s.leg()) : Optional.empty();
    }
}
