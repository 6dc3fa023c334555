// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.BestView;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.feedback.Claim;
import cablewright.lessons.feedback.Feedback;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.paths.Reflector;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Measures how many sentences of feedback are false: of generated exercises of all families and difficulties, marked for
 * attempts with right, near, wrong, overlapping, missing and needless flags, every claim is worked out again by {@link
 * ClaimChecker}, and every finding by the methods here.
 */
public final class StatementMeasurement {

    private static final int DIFFICULTIES = 11;
    private static final int ATTEMPTS = 3;

    private final Map<String, Integer> checked = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();
    private final Marker marker = new Marker();
    private final Words words = Words.in(LengthUnit.METRES, Locale.ROOT);
    private int sentences;

    private StatementMeasurement() {}

    /**
     * Prints the measurement.
     *
     * @param arguments how many exercises, 500 where none is given, and the first seed
     */
    public static void main(String[] arguments) {
        int exercises = arguments.length == 0 ? 500 : Integer.parseInt(arguments[0]);
        long first = arguments.length < 2 ? 1 : Long.parseLong(arguments[1]);
        System.out.print(measure(exercises, first).report());
    }

    static StatementMeasurement measure(int exercises, long firstSeed) {
        StatementMeasurement measured = new StatementMeasurement();
        ExerciseGenerator generator = new ExerciseGenerator();
        for (long seed = firstSeed; seed < firstSeed + exercises; seed++) {
            int before = measured.wrong.size();
            double difficulty = seed % DIFFICULTIES / (DIFFICULTIES - 1.0);
            Exercise exercise = generator.generate(GenerationRequest.anything(seed, difficulty));
            try {
                measured.check(exercise, seed);
            } catch (IllegalArgumentException e) {
                measured.wrong.add(exercise.id() + ": no sentence could be made: " + e.getMessage());
            }
            measured.wrong.stream().skip(before).forEach(System.err::println);
            if ((seed - firstSeed) % 50 == 49) {
                System.err.println(seed - firstSeed + 1 + " exercises, " + measured.sentences + " sentences, "
                        + measured.wrong.size() + " false");
            }
        }
        return measured;
    }

    List<String> wrong() {
        return wrong;
    }

    int sentences() {
        return sentences;
    }

    String report() {
        return "sentences: " + sentences + ", checked claims and findings: " + checked + "\nfalse: " + wrong.size()
                + "\n" + String.join("\n", wrong) + "\n";
    }

    private void check(Exercise exercise, long seed) {
        AnswerKey key = marker.demand(exercise);
        ExactTraces exact = new ExactTraces(exercise);
        ClaimChecker checker = new ClaimChecker(exercise, exact);
        key.events().forEach(event -> best(event, exercise));
        for (int i = 0; i < ATTEMPTS; i++) {
            SplittableRandom random = new SplittableRandom(ATTEMPTS * seed + i);
            MarkSheet sheet = marker.mark(exercise, attempt(key, random));
            LineEnd end =
                    sheet.attempt().flags().stream().findFirst().map(Flag::end).orElse(LineEnd.NEAR);
            List<FindingReasons> all = Feedback.of(exercise, sheet, end, () -> false);
            new FindingWords(words, exercise, all).tell(sheet).forEach(text -> count(text.why()));
            for (FindingReasons reasons : all) {
                for (Claim claim : reasons.claims()) {
                    note(exercise, claim.getClass().getSimpleName(), claim.accept(checker), claim);
                }
                note(
                        exercise,
                        reasons.finding().getClass().getSimpleName(),
                        finding(reasons.finding(), exercise, key, exact, sheet),
                        reasons.finding());
            }
        }
    }

    private void count(String why) {
        sentences += (int) why.chars().filter(c -> c == '.').count()
                - (int) java.util.regex.Pattern.compile("\\d\\.\\d")
                        .matcher(why)
                        .results()
                        .count();
        if (why.contains("{") || why.contains("null") || why.contains("  ")) {
            wrong.add("badly written: " + why);
        }
    }

    private void note(Exercise exercise, String name, Optional<String> problem, Object what) {
        checked.merge(name, 1, Integer::sum);
        problem.ifPresent(why -> wrong.add(exercise.id() + ": " + why + " -- " + what));
    }

    /** A trainee who sets what comes to mind, and misses, misreads, mistakes and guesses. */
    private static Attempt attempt(AnswerKey key, SplittableRandom random) {
        Exercise exercise = key.exercise();
        List<Stimulus> stimuli = exercise.permitted().stimuli();
        List<Integer> averages = exercise.permitted().averages();
        Settings settings = exercise.start()
                .settings()
                .withStimulus(stimuli.get(random.nextInt(stimuli.size())))
                .withAverages(averages.get(random.nextInt(averages.size())));
        List<EventKind> kinds = List.of(
                EventKind.PINCH,
                EventKind.SPLICE,
                EventKind.PARTIAL_SHORT,
                EventKind.CORRODED_JOINT,
                EventKind.WATER,
                EventKind.GRADUAL_DAMAGE,
                EventKind.CONNECTOR);
        List<Flag> flags = new ArrayList<>();
        for (Flag flag : KeyedAnswer.of(key).flags()) {
            if (random.nextDouble() < 0.15) {
                continue;
            }
            boolean wrongKind = random.nextDouble() < 0.3;
            double shift = random.nextDouble() < 0.35 ? random.nextDouble(-3, 3) * settings.halfPulseMetres() : 0;
            double slower = random.nextDouble() < 0.1 ? 0.97 : 1;
            double start = Math.max(0, flag.startMetres() * slower + shift);
            OptionalDouble end = flag.endMetres().isPresent() || random.nextDouble() < 0.2
                    ? OptionalDouble.of(start + random.nextDouble(0.2, 3) * settings.halfPulseMetres())
                    : OptionalDouble.empty();
            EventKind kind = wrongKind ? kinds.get(random.nextInt(kinds.size())) : flag.kind();
            flags.add(new Flag(
                    flag.letter(),
                    flag.end(),
                    start,
                    end,
                    kind,
                    random.nextDouble() < 0.2 ? other(flag.verdict()) : flag.verdict(),
                    flag.velocityFraction() * slower));
        }
        for (char letter = 'X'; letter <= 'Z'; letter++) {
            EventKind kind = kinds.get(random.nextInt(kinds.size()));
            flags.add(new Flag(
                    String.valueOf(letter),
                    LineEnd.NEAR,
                    random.nextDouble(exercise.cable().lengthMetres()),
                    OptionalDouble.empty(),
                    kind,
                    kind.nature() == Nature.DAMAGE ? Verdict.DAMAGE : Verdict.BELONGS,
                    settings.velocityFraction()));
        }
        return new Attempt(exercise.id(), "Ada", flags, settings);
    }

    private static Verdict other(Verdict verdict) {
        return verdict == Verdict.BELONGS ? Verdict.DAMAGE : Verdict.BELONGS;
    }

    /** That no permitted setting shows an event better than the one that is named. */
    private void best(LineEvent event, Exercise exercise) {
        BestView said = event.best();
        for (LineEnd end : exercise.permitted().ends()) {
            for (Stimulus stimulus : exercise.permitted().stimuli()) {
                for (double gain : exercise.permitted().gainsDecibels()) {
                    if (gain > 0 && event.standing() == Requirement.DEMANDED) {
                        continue;
                    }
                    Settings settings = said.settings().withStimulus(stimulus).withGainDecibels(gain);
                    EventVisibility sight =
                            VisibilityAnalysis.of(exercise.cable(), exercise.instrument(), settings, end).stream()
                                    .filter(one -> event.is(one.eventId()))
                                    .findFirst()
                                    .orElse(null);
                    if (sight == null) {
                        return;
                    }
                    for (PlaceVisibility place : sight.places()) {
                        boolean better = place.visibility().compareTo(said.visibility()) < 0
                                || place.visibility() == said.visibility()
                                        && place.contrastVolts() > 1.005 * said.contrastVolts() + 1e-9;
                        note(
                                exercise,
                                "best",
                                better
                                        ? Optional.of(settings + " from " + end + " is better: " + place)
                                        : Optional.empty(),
                                event);
                    }
                }
            }
        }
    }

    private static Optional<String> unless(boolean holds, String problem) {
        return holds ? Optional.empty() : Optional.of(problem);
    }

    private Optional<String> finding(
            Finding finding, Exercise exercise, AnswerKey key, ExactTraces exact, MarkSheet sheet) {
        if (finding instanceof Finding.NothingThere there) {
            boolean something = key.events().stream()
                    .filter(event -> event.on(exercise.cable()).isPresent())
                    .anyMatch(event -> covers(there.flag(), event, exact, 0));
            return unless(!something, "an event lies there");
        }
        if (finding instanceof Finding.Beside beside) {
            double pulse = sheet.attempt().settings().halfPulseMetres();
            double slack = 12 * pulse + 0.1 * exercise.cable().lengthMetres();
            return unless(covers(beside.flag(), beside.event(), exact, slack), "the event is far away");
        }
        if (finding instanceof Finding.BranchFlagged branch) {
            boolean right = exercise.cable().event(branch.tapId()).orElseThrow() instanceof BridgedTap tap
                    && Math.abs(tap.branch().lengthMetres() - branch.alongMetres()) < 0.01;
            return unless(right, "no such branch");
        }
        if (finding instanceof Finding.GhostTakenForEvent ghost) {
            return ghost(ghost, exercise, exact, sheet);
        }
        if (finding instanceof Finding.HiddenEvent hidden) {
            return unless(hidden.event().best().visibility() == Visibility.HIDDEN, "it can be seen");
        }
        return finding instanceof Finding.Missed missed
                ? unless(missed.event().best().visibility() != Visibility.HIDDEN, "it can't be seen")
                : Optional.empty();
    }

    private static boolean covers(Flag flag, LineEvent event, ExactTraces exact, double slackMetres) {
        double a = event.trueStartMetres();
        double b = event.trueEndMetres();
        double factor = flag.velocityFraction() * 299_792_458 / 2;
        double from = factor * Math.min(exact.seconds(a, flag.end()), exact.seconds(b, flag.end()));
        double to = factor * Math.max(exact.seconds(a, flag.end()), exact.seconds(b, flag.end()));
        return flag.startMetres() <= to + slackMetres
                && flag.endMetres().orElse(flag.startMetres()) >= from - slackMetres;
    }

    /** Without any one of the events of its path, a ghost is gone. */
    private Optional<String> ghost(
            Finding.GhostTakenForEvent ghost, Exercise exercise, ExactTraces exact, MarkSheet sheet) {
        Settings settings = sheet.attempt().settings();
        LineEnd end = ghost.flag().end();
        var with = exact.with(settings, end);
        double seconds = ghost.shownMetres() / (ghost.flag().velocityFraction() * 299_792_458 / 2);
        double pulse = 2 * settings.stimulus().settledSeconds();
        List<String> ids = ghost.path().stream()
                .filter(Reflector.Events.class::isInstance)
                .flatMap(met -> ((Reflector.Events) met).ids().stream())
                .filter(id -> exercise.cable().event(id).isPresent())
                .toList();
        for (String id : ids) {
            var without = exact.without(id, settings, end);
            double most = 0;
            for (int i = 0; i < with.count(); i++) {
                if (Math.abs(with.seconds(i) - seconds) <= pulse) {
                    most = Math.max(most, Math.abs(with.volts(i) - without.volts(i)));
                }
            }
            if (most < Math.abs(ghost.heightVolts()) / 3) {
                return Optional.of("without " + id + " only " + most + " changes there");
            }
        }
        return Optional.empty();
    }
}
