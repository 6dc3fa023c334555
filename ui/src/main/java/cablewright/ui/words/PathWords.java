package cablewright.ui.words;

import cablewright.simulator.cable.BridgedTap;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.Splitter;
import cablewright.simulator.explanation.Attribution;
import cablewright.simulator.explanation.Sightings;
import cablewright.simulator.explanation.Turn;
import cablewright.simulator.explanation.WavePath;
import java.util.Optional;

/** Tells which way a wave took. */
public final class PathWords {

    private final Words words;
    private final Cable cable;

    /**
     * Tells the paths of a cable.
     *
     * @param words the words
     * @param cable the cable, told from its near end
     */
    public PathWords(Words words, Cable cable) {
        this.words = words;
        this.cable = cable;
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    /**
     * Tells where the wave turned round, in order.
     *
     * @param path the path
     * @return such as "the splice at 31.0 m, then the tap at 12.0 m, then the splice at 31.0 m"
     */
    public String told(WavePath path) {
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
     * @return such as "the open at 12.0 m in the branch at the bridged tap at 40.0 m"
     */
    public String turn(Turn turn) {
        Cable here = cable;
        String joint = "";
        for (String id : turn.branchIds()) {
            joint = joint.isEmpty() ? name(here, id) : say("sight.inBranch", name(here, id), joint);
            here = branch(here, id).orElse(here);
        }
        String place = name(here, turn.name());
        if (!turn.branchIds().isEmpty()) {
            boolean end = turn.name().equals(Sightings.END_OF_LINE);
            place = end ? say("sight.endOfBranch", joint) : say("sight.inBranch", place, joint);
        }
        return turn.cameBy().equals(turn.branchIds()) ? place : say("sight.fromInside", place);
    }

    private String name(Cable here, String name) {
        if (name.equals(Attribution.PORT)) {
            return say("sight.port");
        }
        return name.equals(Attribution.CABLE_CHANGE)
                ? say("sight.cableChange")
                : new SightWords(words, here).name(name);
    }

    private static Optional<Cable> branch(Cable here, String id) {
        Event event = here.event(id).orElse(null);
        if (event instanceof BridgedTap) {
            return Optional.of(((BridgedTap) event).branch());
        }
        return event instanceof Splitter ? Optional.of(((Splitter) event).leg()) : Optional.empty();
    }
}
