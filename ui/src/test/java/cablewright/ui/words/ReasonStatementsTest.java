// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.feedback.Feedback;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Reads every sentence of reason as a trainee would, takes its numbers and directions out of the words again, and holds them
 * against traces that are simulated here anew.
 */
class ReasonStatementsTest {

    private static final int CASES = 200;
    private static final double LIGHT = 299_792_458.0;
    private static final String N = "([+−]?[0-9.]+)";
    private static final String M = N + "\u00a0m";
    private static final String P = N + "\u00a0%";
    private static final String T = N + "\u00a0(ns|µs)";

    private static final Pattern SWINGS = Pattern.compile("At " + M + " the trace goes (down|up) by " + P
            + ", then (down|up) by " + P + ": the impedance (falls|rises) and comes back\\.");
    private static final Pattern GOES = Pattern.compile("At " + M + " the trace goes (down|up) by " + P
            + " and does not swing back: from there on the impedance is (lower|higher)\\.");
    private static final Pattern DELAY =
            Pattern.compile("The wave is back after " + T + "; at velocity " + N + " that is " + M + "\\.");
    private static final Pattern SEEN =
            Pattern.compile("Your trace reads " + P + " there; without noise it would read " + P + "\\.");
    private static final Pattern NEAREST = Pattern.compile(".+ (?:that comes nearest|as high) goes (down|up) first, by "
            + P + "; at " + M + " it is (?:still )?off by " + P + ", and the noise is " + P + "\\.");
    private static final Pattern SAME =
            Pattern.compile("With what you had set, .+ of the right size would show the same: " + "it is off by " + P
                    + " at most, and the noise is " + P + "\\.");
    private static final Pattern READ = Pattern.compile(
            "Your flag stands " + M + ", " + T + " of the wave's way, (farther|nearer) than the trace shows it\\.");
    private static final Pattern VELOCITY =
            Pattern.compile("Only at velocity " + N + " would the trace show it where your flag is\\.");
    private static final Pattern TOP = Pattern.compile(
            "Your flag stands at a top of the echo, at " + M + "; distance is read at its front, " + M + "\\.");
    private static final Pattern HIDDEN = Pattern.compile("With what you had set: (.+)");

    private final Map<String, Integer> checked = new TreeMap<>();

    @Test
    void everyStatementOfTwoHundredCasesAgreesWithTheSimulation() {
        ExerciseGenerator generator = new ExerciseGenerator();
        for (int seed = 0; seed < CASES; seed++) {
            Exercise exercise = generator.generate(GenerationRequest.anything(40_000 + seed, (seed % 11) / 10.0));
            check(exercise, new SplittableRandom(seed));
        }
        for (String kind : List.of("swings", "goes", "delay", "seen", "nearest", "read", "velocity", "hidden")) {
            assertTrue(checked.getOrDefault(kind, 0) >= 10, "too few checked: " + checked);
        }
    }

    private void check(Exercise exercise, SplittableRandom random) {
        AnswerKey demand = AnswerKey.of(exercise);
        Attempt attempt = withMistakes(demand, random);
        MarkSheet sheet = new Marker().mark(exercise, attempt);
        List<FindingReasons> all = Feedback.of(exercise, sheet, LineEnd.NEAR, () -> false);
        assertEquals(sheet.findings().size(), all.size());
        Words words = Words.in(LengthUnit.METRES, Locale.ROOT);
        ReasonWords told = new ReasonWords(words, new VisibilityWords(words, exercise.cable()), false);
        for (FindingReasons reasons : all) {
            List<String> sentences = told.tell(reasons);
            if (sentences.isEmpty() || reasons.echoes().isEmpty()) {
                continue;
            }
            Case one = new Case(exercise, attempt, reasons);
            sentences.forEach(one::check);
        }
    }

    /** A trainee who sets what comes to mind, and misses, misreads and mistakes. */
    private static Attempt withMistakes(AnswerKey demand, SplittableRandom random) {
        Exercise exercise = demand.exercise();
        var stimuli = exercise.permitted().stimuli();
        var averages = exercise.permitted().averages();
        Settings settings = exercise.start()
                .settings()
                .withStimulus(stimuli.get(random.nextInt(stimuli.size())))
                .withAverages(averages.get(random.nextInt(averages.size())));
        List<Flag> flags = new ArrayList<>();
        List<EventKind> kinds = List.of(
                EventKind.PINCH, EventKind.SPLICE, EventKind.PARTIAL_SHORT, EventKind.CORRODED_JOINT, EventKind.WATER);
        for (Flag flag : KeyedAnswer.of(demand).flags()) {
            double luck = random.nextDouble();
            double shift = luck > 0.5 && luck < 0.8 ? (random.nextBoolean() ? 1 : -1) * random.nextDouble(0.5, 2) : 0;
            if (luck < 0.2) {
                continue;
            }
            EventKind kind = luck > 0.7 ? kinds.get(random.nextInt(kinds.size())) : flag.kind();
            double slower = luck > 0.9 ? 0.97 : 1;
            flags.add(new Flag(
                    flag.letter(),
                    flag.end(),
                    Math.max(0, flag.startMetres() * slower + shift),
                    flag.endMetres().isPresent()
                            ? java.util.OptionalDouble.of(flag.endMetres().getAsDouble() * slower + Math.abs(shift))
                            : flag.endMetres(),
                    kind,
                    kind.nature() == cablewright.simulator.cable.Nature.DAMAGE ? Verdict.DAMAGE : Verdict.BELONGS,
                    flag.velocityFraction() * slower));
        }
        return new Attempt(exercise.id(), "Ada", flags, settings);
    }

    /** A number as it was written: what it may stand for is half a unit of its last digit either way. */
    private record Written(double value, double slack) {
        static Written of(String text) {
            String plain = text.replace('−', '-').replace("+", "");
            int point = plain.indexOf('.');
            int digits = point < 0 ? 0 : plain.length() - point - 1;
            return new Written(Double.parseDouble(plain), 0.5001 * Math.pow(10, -digits));
        }

        boolean means(double other) {
            return Math.abs(value - other) <= slack;
        }

        Written times(double factor) {
            return new Written(value * factor, slack * factor);
        }
    }

    private static Written seconds(String number, String unit) {
        Written written = Written.of(number).times(unit.equals("ns") ? 1e-9 : 1e-6);
        // Times are written with three digits.
        return new Written(written.value(), Math.max(written.slack(), 5.001e-3 * written.value()));
    }

    private final class Case {
        private final Exercise exercise;
        private final FindingReasons reasons;
        private final LineEnd end;
        private final Settings settings;
        private final Cable tested;
        private final String eventId;
        private final Flag flag;
        private final Trace with;
        private final Trace without;

        Case(Exercise exercise, Attempt attempt, FindingReasons reasons) {
            this.exercise = exercise;
            this.reasons = reasons;
            boolean matched = reasons.finding() instanceof Finding.Matched;
            this.flag = matched ? ((Finding.Matched) reasons.finding()).flag() : null;
            this.end = matched ? flag.end() : LineEnd.NEAR;
            this.settings =
                    attempt.settings().withVelocityFraction(matched ? flag.velocityFraction() : velocity(attempt));
            this.tested =
                    end == LineEnd.NEAR ? exercise.cable() : exercise.cable().seenFromFarEnd();
            this.eventId = event(reasons.finding()).eventId();
            this.with = trace(tested);
            this.without = trace(tested.withoutEvent(eventId));
        }

        private double velocity(Attempt attempt) {
            return attempt.settings().velocityFraction();
        }

        private LineEvent event(Finding finding) {
            if (finding instanceof Finding.Matched matched) {
                return matched.event();
            }
            return finding instanceof Finding.Missed m ? m.event() : ((Finding.HiddenEvent) finding).event();
        }

        private Trace trace(Cable cable) {
            return new Reflectometer(exercise.instrument())
                    .withoutNoise(new SimulatedPort(cable, exercise.instrument().sourceOhms()), settings);
        }

        private double change(int i) {
            return 100 * (with.volts(i) - without.volts(i));
        }

        void check(String sentence) {
            boolean known = match("swings", SWINGS, sentence, this::swings)
                    || match("goes", GOES, sentence, this::goes)
                    || match("delay", DELAY, sentence, this::delay)
                    || match("seen", SEEN, sentence, this::seen)
                    || match("nearest", NEAREST, sentence, this::nearest)
                    || match("same", SAME, sentence, this::same)
                    || match("read", READ, sentence, this::read)
                    || match("velocity", VELOCITY, sentence, this::velocity)
                    || match("top", TOP, sentence, this::top)
                    || match("hidden", HIDDEN, sentence, this::hidden);
            assertTrue(known, "a sentence that nobody checks: " + sentence);
        }

        private boolean match(
                String name, Pattern pattern, String sentence, java.util.function.Consumer<Matcher> check) {
            Matcher matcher = pattern.matcher(sentence);
            if (!matcher.matches()) {
                return false;
            }
            try {
                check.accept(matcher);
            } catch (AssertionError e) {
                fail(exercise.id() + " " + eventId + " from " + end + ": " + sentence + " -- " + e.getMessage(), e);
            }
            checked.merge(name, 1, Integer::sum);
            return true;
        }

        /** The sample at which a lobe of the said height and direction has its top, at or behind a place. */
        private int lobe(double fromMetres, double sign, Written height) {
            for (int i = Math.max(1, with.indexNear(fromMetres)); i < with.count() - 1; i++) {
                boolean top = Math.abs(change(i)) >= Math.abs(change(i - 1))
                        && Math.abs(change(i)) >= Math.abs(change(i + 1));
                if (change(i) * sign > 0 && top && height.means(Math.abs(change(i)))) {
                    return i;
                }
            }
            return -1;
        }

        private double sign(String word) {
            return word.equals("up") ? 1 : -1;
        }

        private void isAPlaceOfTheEvent(Written metres) {
            Event event = tested.event(eventId).orElseThrow();
            CableProfile profile = CableProfile.of(tested);
            boolean found = false;
            for (double place : new double[] {event.startMetres(), event.endMetres()}) {
                found |= metres.means(settings.metresThereAndBack(2 * profile.secondsTo(place)));
            }
            assertTrue(found, "no edge of the event shows there");
        }

        /** Distance is read where the edge is at half height, so an echo begins a little before it. */
        private double front(Written place) {
            return 0.97 * place.value() - 2 * settings.halfPulseMetres();
        }

        private int firstLobe(Matcher said, String direction, String height) {
            Written place = Written.of(said.group(1));
            isAPlaceOfTheEvent(place);
            int top = lobe(front(place), sign(direction), Written.of(height));
            assertTrue(top > 0, "no lobe of that height and direction");
            // At the farther edge of a stretch the echo of the nearer one still dies away.
            boolean nearest = place.means(reasons.echoes().get(0).echo().shownMetres());
            for (int i = with.indexNear(front(place)); nearest && i < top; i++) {
                boolean against = change(i) * sign(direction) < -0.5 * Math.abs(change(top));
                assertTrue(!against, "it first goes the other way");
            }
            return top;
        }

        private void swings(Matcher said) {
            int first = firstLobe(said, said.group(2), said.group(3));
            assertEquals(-sign(said.group(2)), sign(said.group(4)));
            assertEquals(said.group(2).equals("down") ? "falls" : "rises", said.group(6));
            double second = Math.abs(Written.of(said.group(5)).value());
            double swing = 0;
            for (EventEcho echo :
                    reasons.echoes().stream().map(fact -> fact.echo()).toList()) {
                if (Written.of(said.group(1)).means(echo.shownMetres())) {
                    for (int i = first; i <= with.indexNear(echo.secondTopMetres()); i++) {
                        swing = Math.max(swing, -change(i) * sign(said.group(2)));
                    }
                }
            }
            assertTrue(Written.of(said.group(5)).means(swing), "it swings back by " + swing);
            assertTrue(second > 0.24 * Math.abs(change(first)), "hardly a second lobe");
        }

        private void goes(Matcher said) {
            firstLobe(said, said.group(2), said.group(3));
            assertEquals(said.group(2).equals("down") ? "lower" : "higher", said.group(4));
        }

        private void delay(Matcher said) {
            Written time = seconds(said.group(1), said.group(2));
            Written velocity = Written.of(said.group(3));
            Written metres = Written.of(said.group(4));
            assertEquals(settings.velocityFraction(), velocity.value(), velocity.slack());
            isAPlaceOfTheEvent(metres);
            double slack = metres.slack() + 0.006 * metres.value() + 0.002;
            assertEquals(metres.value(), time.value() * velocity.value() * LIGHT / 2, slack);
        }

        private void seen(Matcher said) {
            Trace measured = new Reflectometer(exercise.instrument())
                    .measure(
                            new SimulatedPort(tested, exercise.instrument().sourceOhms()),
                            settings,
                            exercise.noiseSeed());
            Written reads = Written.of(said.group(1));
            Written without = Written.of(said.group(2));
            boolean found = false;
            for (int i = 0; i < with.count(); i++) {
                found |= reads.means(100 * measured.volts(i)) && without.means(100 * with.volts(i));
            }
            assertTrue(found, "the trace reads so nowhere");
        }

        private double noise() {
            return 100 * exercise.instrument().noiseVoltsAfter(settings.averages());
        }

        private Trace other() {
            List<Event> events = new ArrayList<>(tested.withoutEvent(eventId).events());
            Event event = reasons.comparison().orElseThrow().event();
            events.add(
                    end == LineEnd.NEAR
                            ? event
                            : event.mirrored(exercise.cable().lengthMetres()));
            return trace(tested.withEvents(events));
        }

        private void nearest(Matcher said) {
            assertTrue(Written.of(said.group(5)).means(noise()), "noise is " + noise());
            Written left = Written.of(said.group(4));
            assertTrue(left.value() + left.slack() >= 3 * noise(), "not told apart");
            Trace other = other();
            int at = with.indexNear(Written.of(said.group(3)).value());
            boolean found = false;
            double largest = 0;
            int reach = 1 + (int) Math.ceil(0.06 / settings.metresThereAndBack(with.sampleSeconds()));
            for (int i = Math.max(0, at - reach); i <= Math.min(with.count() - 1, at + reach); i++) {
                found |= left.means(100 * Math.abs(other.volts(i) - with.volts(i)));
            }
            for (int i = 0; i < with.count(); i++) {
                double change = 100 * (other.volts(i) - without.volts(i));
                largest = change * sign(said.group(1)) > 0
                                && Written.of(said.group(2)).means(Math.abs(change))
                        ? Math.abs(change)
                        : largest;
            }
            assertTrue(found, "it is not off by that there");
            assertTrue(largest > 0, "it does not go there so");
        }

        private void same(Matcher said) {
            assertTrue(Written.of(said.group(2)).means(noise()), "noise is " + noise());
            assertTrue(Written.of(said.group(1)).value() <= 3 * noise() + 0.01, "they can be told apart");
        }

        private void read(Matcher said) {
            Written off = Written.of(said.group(1));
            boolean found = false;
            for (var reason : reasons.places()) {
                double metres =
                        reason.place().flaggedMetres() - shown(reason.place().trueMetres());
                boolean direction = said.group(4).equals(metres > 0 ? "farther" : "nearer");
                found |= direction && Math.abs(Math.abs(metres) - off.value()) <= off.slack() + 0.02;
            }
            assertTrue(found, "no flag is off so");
            double metres = seconds(said.group(2), said.group(3)).value() * settings.velocityFraction() * LIGHT / 2;
            assertEquals(off.value(), metres, off.slack() + 0.006 * metres + 0.002);
        }

        /** Where the trace shows a place, from the wave's time there and back alone. */
        private double shown(double metres) {
            return settings.metresThereAndBack(2 * CableProfile.of(tested, 1e9).secondsTo(metres));
        }

        private void velocity(Matcher said) {
            Written fraction = Written.of(said.group(1));
            boolean found = false;
            for (var reason : reasons.places()) {
                double seconds = 2
                        * CableProfile.of(tested, 1e9).secondsTo(reason.place().trueMetres());
                found |= Math.abs(fraction.value() * LIGHT * seconds / 2
                                - reason.place().flaggedMetres())
                        <= 0.0006 * LIGHT * seconds / 2 + 0.01;
            }
            assertTrue(found, "that velocity does not put it there");
        }

        private void top(Matcher said) {
            double top = Written.of(said.group(1)).value();
            double front = Written.of(said.group(2)).value();
            boolean nearer = reasons.places().stream()
                    .anyMatch(reason -> Math.abs(reason.place().flaggedMetres() - top)
                            <= Math.abs(reason.place().flaggedMetres() - front) + 0.11);
            assertTrue(nearer, "the flag is not nearer to the top");
            assertTrue(reasons.places().stream().anyMatch(reason -> Written.of(said.group(2))
                    .means(shown(reason.place().trueMetres()))));
        }

        private void hidden(Matcher said) {
            Matcher percent = Pattern.compile(P).matcher(said.group(1));
            double most = 0;
            for (int i = 0; i < with.count(); i++) {
                most = Math.max(most, Math.abs(change(i)));
            }
            while (percent.find()) {
                Written number = Written.of(percent.group(1));
                boolean noise = number.means(noise());
                assertTrue(noise || number.value() - number.slack() <= most, "more than it changes anywhere");
            }
        }
    }
}
