// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.bench.DocumentChange.What;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Lists the differences between two versions of a lesson, in the order of the later one. */
public final class DocumentChanges {

    private final List<DocumentChange> changes = new ArrayList<>();

    private DocumentChanges() {}

    /**
     * Compares two versions.
     *
     * @param before the earlier one
     * @param after the later one
     * @return what differs; nothing where they are equal
     */
    public static List<DocumentChange> between(Lesson before, Lesson after) {
        DocumentChanges found = new DocumentChanges();
        found.lesson(before, after);
        for (Exercise exercise : after.exercises()) {
            Optional<Exercise> earlier = before.exercise(exercise.id());
            if (earlier.isPresent()) {
                found.exercise(earlier.get(), exercise);
            } else {
                found.add(What.EXERCISE_ADDED, exercise, "");
            }
        }
        before.exercises().stream()
                .filter(exercise -> after.exercise(exercise.id()).isEmpty())
                .forEach(exercise -> found.add(What.EXERCISE_REMOVED, exercise, ""));
        return List.copyOf(found.changes);
    }

    private void add(What what, Exercise exercise, String subject) {
        changes.add(new DocumentChange(what, exercise.title(), subject));
    }

    private void lesson(Lesson before, Lesson after) {
        boolean alike = before.id().equals(after.id())
                && before.title().equals(after.title())
                && before.introduction().equals(after.introduction())
                && before.worldNote().equals(after.worldNote())
                && before.passMarkFraction() == after.passMarkFraction()
                && before.pages().equals(after.pages());
        if (!alike) {
            changes.add(new DocumentChange(What.LESSON_TEXTS, after.title(), ""));
        }
        if (!common(before, after).equals(common(after, before))) {
            changes.add(new DocumentChange(What.ORDER, after.title(), ""));
        }
    }

    /** Names of the exercises that both have, in the order of the first. */
    private static List<String> common(Lesson ordered, Lesson other) {
        return ordered.exercises().stream()
                .map(Exercise::id)
                .filter(id -> other.exercise(id).isPresent())
                .toList();
    }

    private void exercise(Exercise before, Exercise after) {
        cable(before.cable(), after);
        differs(What.RECORD_CHANGED, before, after, Exercise::record);
        differs(What.BRIEF_CHANGED, before, after, it -> List.of(it.title(), it.brief(), it.cautions()));
        differs(
                What.RULES_CHANGED,
                before,
                after,
                it -> List.of(
                        it.permitted(),
                        it.start(),
                        it.toleranceMetres(),
                        it.endIsGiven(),
                        it.instrument(),
                        it.noiseSeed()));
        differs(What.HINTS_CHANGED, before, after, Exercise::hints);
        differs(What.EXPLANATION_CHANGED, before, after, Exercise::explanation);
        differs(What.PREDICTION_CHANGED, before, after, Exercise::prediction);
    }

    private void differs(What what, Exercise before, Exercise after, Function<Exercise, Object> part) {
        if (!part.apply(before).equals(part.apply(after))) {
            add(what, after, "");
        }
    }

    private void cable(Cable before, Exercise after) {
        Cable now = after.cable();
        if (!before.withEvents(List.of()).equals(now.withEvents(List.of()))) {
            add(What.CABLE_CHANGED, after, "");
        }
        for (Event event : now.events()) {
            Optional<Event> earlier = before.event(event.id());
            if (earlier.isEmpty()) {
                add(What.EVENT_ADDED, after, event.id());
            } else if (!earlier.get().equals(event)) {
                boolean onlyMoved = earlier.get().getClass() == event.getClass()
                        && earlier.get().movedTo(event.startMetres()).equals(event);
                add(onlyMoved ? What.EVENT_MOVED : What.EVENT_CHANGED, after, event.id());
            }
        }
        before.events().stream()
                .filter(event -> now.event(event.id()).isEmpty())
                .forEach(event -> add(What.EVENT_REMOVED, after, event.id()));
    }
}
