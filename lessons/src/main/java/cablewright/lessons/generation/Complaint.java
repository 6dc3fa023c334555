// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the caller noticed, so that it follows from the fault (common practice, no source). It is no more than a caller would
 * know: a line that is looked at as a matter of routine may be damaged, and trouble on a sound line comes from elsewhere.
 */
enum Complaint {
    /** Nothing: the line is to be looked at all the same. */
    ROUTINE,
    /** It works, but badly or not always. */
    TROUBLE,
    /** It is worse when it rains. */
    RAIN,
    /** Nothing gets through. */
    DEAD,
    /** The two conductors touch. */
    SHORTED,
    /** Something leaks between the conductors. */
    LEAK,
    /** Another conversation is heard. */
    CROSSTALK;

    private static final double ROUTINE_SHARE = 0.3;
    private static final double ROUTINE_SHARE_OF_SOUND = 0.6;

    /** Draws one that the events of a line could cause. */
    static Complaint draw(SeededRandom dice, ExerciseFamily family, List<Event> events) {
        Set<EventKind> damage = events.stream()
                .map(Event::kind)
                .filter(kind -> kind.nature() == Nature.DAMAGE)
                .collect(Collectors.toSet());
        boolean routine = dice.chance(damage.isEmpty() ? ROUTINE_SHARE_OF_SOUND : ROUTINE_SHARE);
        if (damage.contains(EventKind.OPEN)) {
            return DEAD;
        }
        if (damage.contains(EventKind.SHORT)) {
            return SHORTED;
        }
        if (routine) {
            return ROUTINE;
        }
        if (damage.contains(EventKind.WATER)) {
            return RAIN;
        }
        if (damage.contains(EventKind.SPLIT)) {
            return CROSSTALK;
        }
        boolean mains = family == ExerciseFamily.BUILDING_WIRE;
        if (mains && damage.contains(EventKind.PARTIAL_SHORT)) {
            return LEAK;
        }
        return mains && damage.equals(Set.of(EventKind.PINCH)) ? ROUTINE : TROUBLE;
    }

    /** What is said instead where a family has no words of its own. */
    Complaint plainer() {
        return switch (this) {
            case SHORTED -> DEAD;
            case RAIN, LEAK, CROSSTALK, DEAD -> TROUBLE;
            default -> ROUTINE;
        };
    }
}
