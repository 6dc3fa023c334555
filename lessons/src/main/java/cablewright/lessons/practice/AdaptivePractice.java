// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.Outcome;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.generation.Contrast;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.practice.ItemBank.Item;
import cablewright.lessons.practice.ItemBank.Task;
import cablewright.simulator.cable.EventKind;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Practice that follows the trainee: chooses a kind of damage and a difficulty, has an exercise made, and learns from how
 * it was answered. What it knows is worked out from the trainee's records alone, so it survives a restart.
 *
 * <p>Kind: after a confusion that is trained by contrast, the two kinds in turn; after a flag where nothing is, a line with a
 * ghost; after a splice taken for a connector or the other way, a line with both; else the one answered least often and, of
 * equals, worst. Difficulty: the step at which the chance of success is nearest to {@value #AIM}. A step's difficulty
 * starts at 4 (d − ½) logits and is learnt like any item's. Not safe for several threads.
 */
public final class AdaptivePractice {

    /** Chance of success that is aimed at. */
    public static final double AIM = 0.75;

    private static final Set<EventKind> JOINTS = Set.of(EventKind.SPLICE, EventKind.CONNECTOR);
    private static final double[] STEPS = {0, 0.2, 0.4, 0.6, 0.8, 1};
    private static final int PRIOR_ANSWERS = 20;
    private static final int LEFT_ALONE = 2;
    private static final double CONTRAST_DIFFICULTY = 0.3;
    private static final double MIDDLE = 0.5;
    private static final long TRAINEES = 0xFFFFFL;
    private static final int SEEDS_BITS = 20;

    private final List<ExerciseFamily> families;
    private final ExerciseGenerator generator = new ExerciseGenerator();
    private final Map<EventKind, Integer> asked = new EnumMap<>(EventKind.class);
    private final Map<String, ReviewBox> reviews = new LinkedHashMap<>();
    private final Map<String, Exercise> handMade = new LinkedHashMap<>();
    /** Kind and verdict are worth six of ten. */
    private static final double PLACE_WAS_MISREAD_MARKS = 8.5;

    private final Map<String, GenerationRequest> made = new HashMap<>();
    private final Map<String, Double> difficulties = new HashMap<>();
    private final Deque<EventKind> contrast = new ArrayDeque<>();
    private final Deque<Contrast> apart = new ArrayDeque<>();
    private final Set<Contrast> askedOnce = EnumSet.noneOf(Contrast.class);
    private final Deque<Task> recent = new ArrayDeque<>();
    private TraineeModel trainee = TraineeModel.unknown();
    private ItemBank bank;
    private long seed;

    /**
     * Starts with what is known of a trainee.
     *
     * @param families families to practise, at least one
     * @param lessons lessons that the trainee may have done: answers to their exercises count for how hard these are, and
     *     mistakes in them come back
     * @param records the trainee's records, oldest first
     * @param seed seed of the exercises that are made; the same records and seed give the same exercises
     */
    public AdaptivePractice(
            List<ExerciseFamily> families, List<Lesson> lessons, List<AttemptRecord> records, long seed) {
        if (families.isEmpty()) {
            throw new IllegalArgumentException(
                    "families is empty; name at least one of " + Arrays.toString(ExerciseFamily.values()));
        }
        this.families = List.copyOf(families);
        this.seed = seed;
        this.bank = ItemBank.of(items());
        for (Lesson lesson : lessons) {
            lesson.exercises().forEach(exercise -> handMade.put(key(lesson.id(), exercise.id()), exercise));
        }
        records.forEach(this::learn);
    }

    /**
     * Starts with what is known of one trainee of many.
     *
     * @param families families to practise, at least one
     * @param lessons lessons that the trainee may have done
     * @param records records of anybody, oldest first
     * @param trainee whose count; other trainees meet other exercises
     * @return practice that knows the trainee
     */
    public static AdaptivePractice of(
            List<ExerciseFamily> families, List<Lesson> lessons, List<AttemptRecord> records, String trainee) {
        List<AttemptRecord> own = records.stream()
                .filter(record -> record.trainee().equals(trainee))
                .toList();
        return new AdaptivePractice(families, lessons, own, (trainee.hashCode() & TRAINEES) << SEEDS_BITS);
    }

    private static String key(String lessonId, String exerciseId) {
        return lessonId + "/" + exerciseId;
    }

    /** Under which name a record's exercise comes back: its own where it was made, else that of its lesson before it. */
    private String key(AttemptRecord record) {
        String inItsLesson = key(record.lessonId(), record.exerciseId());
        if (handMade.containsKey(inItsLesson)) {
            return inItsLesson;
        }
        if (made.containsKey(record.exerciseId())) {
            return record.exerciseId();
        }
        return reviews.keySet().stream()
                .filter(name -> name.endsWith("/" + record.exerciseId()))
                .findFirst()
                .orElse(inItsLesson);
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (EventKind kind : kinds()) {
            for (double step : STEPS) {
                Rating prior = new Rating(DifficultyFeatures.logits(step), PRIOR_ANSWERS);
                items.add(new Item(new Task(kind, step), prior));
            }
        }
        return items;
    }

    /**
     * Returns the kinds of damage that can be practised.
     *
     * @return the kinds, those of the first family first
     */
    public List<EventKind> kinds() {
        return families.stream()
                .flatMap(family -> family.damage().stream())
                .distinct()
                .toList();
    }

    /**
     * Makes the next exercise.
     *
     * @return the exercise
     */
    public Exercise next() {
        if (!apart.isEmpty()) {
            return make(new GenerationRequest(seed++, families, List.of(), CONTRAST_DIFFICULTY, apart.removeFirst()));
        }
        return next(contrast.isEmpty() ? leastKnown() : contrast.removeFirst());
    }

    /**
     * Makes an exercise about one kind of damage, at the difficulty that suits the trainee.
     *
     * @param kind the kind, one of {@link #kinds}
     * @return the exercise
     */
    public Exercise next(EventKind kind) {
        ItemBank ofKind = ItemBank.of(bank.items().values().stream()
                .filter(item -> item.kind() == kind)
                .toList());
        Item item = ofKind.next(trainee, AIM, new HashSet<>(recent)).orElseThrow();
        recent.addLast(item.task());
        if (recent.size() > LEFT_ALONE) {
            recent.removeFirst();
        }
        return make(new GenerationRequest(
                seed++, families, List.of(kind), item.task().step()));
    }

    private Exercise make(GenerationRequest request) {
        Exercise exercise = generator.generate(request);
        made.put(exercise.id(), request);
        return exercise;
    }

    /**
     * Returns the request of which an exercise was made.
     *
     * @param exerciseId the exercise's name
     * @return the request; empty where neither this practice nor one whose records it knows made the exercise
     */
    public Optional<GenerationRequest> requestOf(String exerciseId) {
        return Optional.ofNullable(made.get(exerciseId));
    }

    private EventKind leastKnown() {
        EventKind best = null;
        for (EventKind kind : kinds()) {
            if (best == null || comesBefore(kind, best)) {
                best = kind;
            }
        }
        return best;
    }

    private boolean comesBefore(EventKind kind, EventKind best) {
        int a = asked.getOrDefault(kind, 0);
        int b = asked.getOrDefault(best, 0);
        return a < b
                || (a == b
                        && trainee.ability(kind).logits()
                                < trainee.ability(best).logits());
    }

    /**
     * Learns from a marked attempt.
     *
     * @param record its record
     */
    public void learn(AttemptRecord record) {
        record.made().ifPresent(request -> made.put(record.exerciseId(), request));
        Optional<GenerationRequest> request = requestOf(record.exerciseId());
        double difficulty = request.map(GenerationRequest::difficulty).orElseGet(() -> difficulty(key(record)));
        for (Outcome outcome : record.outcomes()) {
            learn(outcome, difficulty);
        }
        if (!record.strayKinds().isEmpty()) {
            askApart(Contrast.GHOST_AND_EVENT);
        }
        request.ifPresent(one -> seed = Math.max(seed, one.seed() + 1));
        review(record);
    }

    private void learn(Outcome outcome, double difficulty) {
        EventKind kind = outcome.kind();
        asked.merge(kind, 1, Integer::sum);
        double before = trainee.ability(kind).logits();
        double step = Arrays.stream(STEPS)
                .boxed()
                .min((a, b) -> Double.compare(Math.abs(a - difficulty), Math.abs(b - difficulty)))
                .orElseThrow();
        Item item = bank.items().get(new Task(kind, step));
        double logits = item == null
                ? DifficultyFeatures.logits(difficulty)
                : item.difficulty().logits();
        trainee = trainee.after(kind, logits, outcome.success());
        if (item != null) {
            bank = bank.after(item.task(), before, outcome.success());
        }
        if (outcome.truth() == Verdict.DAMAGE && outcome.flaggedKind().isEmpty()) {
            askOnce(Contrast.LADDER_OF_WIDTHS);
        }
        boolean onlyThePlace = outcome.flaggedKind().equals(Optional.of(kind))
                && outcome.flaggedVerdict().equals(Optional.of(outcome.truth()))
                && outcome.marks() < PLACE_WAS_MISREAD_MARKS;
        if (onlyThePlace) {
            askOnce(Contrast.BOTH_ENDS);
        }
        outcome.flaggedKind()
                .filter(flagged -> flagged != kind && JOINTS.contains(flagged) && JOINTS.contains(kind))
                .ifPresent(flagged -> askApart(Contrast.SPLICE_AND_CONNECTOR));
        outcome.flaggedKind()
                .flatMap(flagged -> ContrastPairs.partner(kind, flagged))
                .ifPresent(other -> {
                    if (kinds().contains(other) && kinds().contains(kind)) {
                        contrast.addLast(kind);
                        contrast.addLast(other);
                    }
                });
    }

    /** Once in a sitting: who misses much is not to be given nothing else. */
    private void askOnce(Contrast wanted) {
        if (askedOnce.add(wanted)) {
            askApart(wanted);
        }
    }

    /** One exercise in which the two can be distinguished, if lines of these families can have both. */
    private void askApart(Contrast wanted) {
        if (!apart.contains(wanted) && families.stream().anyMatch(wanted::isKnownTo)) {
            apart.addLast(wanted);
        }
    }

    /** How hard an exercise of a lesson is, by its features; the middle where the lesson is not known. */
    private double difficulty(String key) {
        Exercise exercise = handMade.get(key);
        return exercise == null
                ? MIDDLE
                : difficulties.computeIfAbsent(
                        key, k -> DifficultyFeatures.of(AnswerKey.of(exercise)).difficulty());
    }

    /** What was not answered well comes back: an exercise goes into the boxes when it earned less than seven tenths. */
    private void review(AttemptRecord record) {
        boolean right = record.fraction() >= 0.7;
        String key = key(record);
        ReviewBox box = reviews.get(key);
        if (box != null) {
            reviews.put(key, box.after(right, record.committedAt()));
        } else if (!right) {
            reviews.put(key, ReviewBox.ofMistake(record.committedAt()));
        }
    }

    public TraineeModel trainee() {
        return trainee;
    }

    /**
     * Returns the names of exercises that are to be asked again.
     *
     * @param now the time
     * @return names, those due longest first
     */
    public List<String> due(Instant now) {
        return reviews.entrySet().stream()
                .filter(entry -> entry.getValue().isDue(now))
                .sorted((a, b) -> a.getValue().dueAt().compareTo(b.getValue().dueAt()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * Gives an exercise again by the name under which it is due.
     *
     * @param name its name
     * @return the same exercise; empty where it is of a lesson that is not known
     */
    public Optional<Exercise> again(String name) {
        return Optional.ofNullable(handMade.get(name)).or(() -> requestOf(name).map(generator::generate));
    }
}
