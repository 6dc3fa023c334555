// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ExerciseGeneratorTest {

    private static final int MANY = 1000;

    /** The marker looks at every permitted setting of each, so it gets fewer; {@code -Dexercises=1000} marks all. */
    private static final int MARKED = Integer.getInteger("exercises", 100);

    private static List<Exercise> thousand = List.of();

    @BeforeAll
    static void make() {
        ExerciseGenerator generator = new ExerciseGenerator();
        thousand = IntStream.range(0, MANY)
                .mapToObj(seed -> generator.generate(GenerationRequest.anything(seed, (seed % 11) / 10.0)))
                .toList();
    }

    @AfterAll
    static void forget() {
        thousand = List.of();
    }

    @Test
    void thousandExercisesAreFitToSet() {
        Map<EventKind, Integer> asked = new EnumMap<>(EventKind.class);
        Set<String> briefs = new HashSet<>();
        int sound = 0;
        int belongs = 0;
        for (Exercise exercise : thousand) {
            briefs.add(exercise.title() + exercise.cable().lengthMetres());
            boolean damaged = false;
            for (var event : exercise.cable().events()) {
                asked.merge(event.kind(), 1, Integer::sum);
                damaged |= event.kind().nature() == Nature.DAMAGE;
                belongs += event.kind().nature() == Nature.HARDWARE ? 1 : 0;
            }
            sound += damaged ? 0 : 1;
            recordIsHonestUnlessItWarns(exercise);
        }
        assertTrue(briefs.size() > 0.9 * MANY, "only " + briefs.size() + " differ");
        assertTrue(sound > 20 && sound < 250, sound + " sound lines of " + MANY);
        assertTrue(belongs > MANY / 2, belongs + " things that belong");
        assertTrue(asked.size() >= 15, "kinds met: " + asked);
    }

    private static void recordIsHonestUnlessItWarns(Exercise exercise) {
        if (exercise.record().mayLie()) {
            return;
        }
        for (RecordedItem item : exercise.record().items()) {
            double place = exercise.cable().event(item.id()).orElseThrow().startMetres();
            assertEquals(place, item.positionMetres(), 1.5 + 0.005 * place);
        }
    }

    /**
     * What the generator promises, asked of the marker, which looks at every permitted setting: all damage that no full
     * reflection hides is clear at one of them, there is one right answer, it earns every mark, and it digs nothing up for nothing.
     */
    @Test
    void eachExerciseShowsWhatItAsksForAndHasOneRightAnswer() {
        for (Exercise exercise : thousand.subList(0, MARKED)) {
            Marker marker = new Marker();
            AnswerKey demand = marker.demand(exercise);
            Attempt keyed = KeyedAnswer.of(demand);
            MarkSheet sheet = marker.mark(exercise, keyed);
            assertEquals(sheet.maximum(), sheet.marks(), 1e-9, exercise.toString());
            assertEquals(0, sheet.needlessDigs());
            assertEquals(demand.demanded().size(), keyed.flags().size());
            for (LineEvent event : demand.events()) {
                boolean damage = event.kind().nature() == Nature.DAMAGE;
                assertEquals(damage ? Verdict.DAMAGE : Verdict.BELONGS, event.truth());
                assertTrue(
                        !damage || event.standing() == Requirement.DEMANDED || isBehindAFullReflection(exercise, event),
                        () -> exercise.id() + ": " + event);
            }
            assertFalse(demand.demanded().isEmpty(), exercise.id());
        }
    }

    private static boolean isBehindAFullReflection(Exercise exercise, LineEvent event) {
        return event.eventId().isEmpty()
                || exercise.cable().events().stream()
                        .anyMatch(other -> (other.kind() == EventKind.OPEN || other.kind() == EventKind.SHORT)
                                && other.startMetres() < event.trueStartMetres());
    }

    @Test
    void whereBothEndsMayBeTestedTheFirstHintSaysWhatTheNearEndShows() {
        ExerciseGenerator generator = new ExerciseGenerator();
        for (int seed = 0; seed < 60; seed++) {
            Exercise exercise = generator.generate(GenerationRequest.anything(seed, 0.9));
            boolean all = AnswerKey.of(exercise).events().stream()
                    .filter(event -> event.eventId().isPresent())
                    .filter(event -> event.kind().nature() == Nature.DAMAGE)
                    .noneMatch(event -> isBehindAFullReflection(exercise, event));
            String first = exercise.hints().get(0).text();
            assertEquals(all, first.startsWith("Everything that must be found"), exercise.id() + ": " + first);
        }
    }

    @Test
    void sameSeedGivesTheSameExerciseWhateverWasMadeBefore() {
        ExerciseGenerator used = new ExerciseGenerator();
        for (int seed = 0; seed < 5; seed++) {
            used.generate(GenerationRequest.anything(seed, 0.5));
        }
        for (int seed = 100; seed < 110; seed++) {
            GenerationRequest request = GenerationRequest.anything(seed, 0.7);
            assertEquals(new ExerciseGenerator().generate(request), used.generate(request));
        }
    }

    @Test
    void askedKindIsThere() {
        ExerciseGenerator generator = new ExerciseGenerator();
        for (ExerciseFamily family : ExerciseFamily.values()) {
            for (EventKind kind : family.damage()) {
                Exercise exercise = generator.generate(new GenerationRequest(11, List.of(family), List.of(kind), 0.3));
                assertTrue(
                        exercise.cable().events().stream().anyMatch(event -> event.kind() == kind),
                        family + " " + kind);
            }
        }
    }

    @Test
    void difficultExercisesHaveMoreEventsThatStandLower() {
        ExerciseGenerator generator = new ExerciseGenerator();
        double plain = 0;
        double hard = 0;
        int plainEvents = 0;
        int hardEvents = 0;
        for (int seed = 0; seed < 120; seed++) {
            Exercise easy = generator.generate(GenerationRequest.anything(seed, 0));
            Exercise difficult = generator.generate(GenerationRequest.anything(seed, 1));
            plainEvents += easy.cable().events().size();
            hardEvents += difficult.cable().events().size();
            plain += lowest(easy);
            hard += lowest(difficult);
        }
        assertTrue(hardEvents > 1.2 * plainEvents, hardEvents + " against " + plainEvents);
        assertTrue(hard < 0.9 * plain, hard + " against " + plain);
    }

    private static double lowest(Exercise exercise) {
        return AnswerKey.of(exercise).demanded().stream()
                .mapToDouble(event -> event.best().contrastVolts())
                .min()
                .orElse(0);
    }

    @Test
    void kindThatNoFamilyKnowsIsRefusedInWords() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class,
                () -> new GenerationRequest(1, List.of(ExerciseFamily.DATA_CABLING), List.of(EventKind.WATER), 0.5));
        assertTrue(refusal.getMessage().contains("water"), refusal.getMessage());
        assertFalse(refusal.getMessage().isBlank());
    }
}
