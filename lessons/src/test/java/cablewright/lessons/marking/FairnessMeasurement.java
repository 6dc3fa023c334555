// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Measures on generated exercises whether marking is fair: a perfect reader of the noise-free trace, at every permitted pulse
 * and end at which a place is clear, gets full marks for the place; whoever flags every two metres earns little.
 */
public final class FairnessMeasurement {

    private static final double DIFFICULTIES = 5;
    private static final double SPACING_METRES = 2;

    private final Marker marker = new Marker();
    private final PropagationCache memory = new PropagationCache();
    private final List<String> unfair = new ArrayList<>();
    private int places;
    private int unread;
    private double mostGuessed;
    private String guess = "";

    /**
     * Prints the measurement.
     *
     * @param arguments how many exercises, 1000 where none is given, and the first seed
     */
    public static void main(String[] arguments) {
        int exercises = arguments.length == 0 ? 1000 : Integer.parseInt(arguments[0]);
        long first = arguments.length < 2 ? 1 : Long.parseLong(arguments[1]);
        System.out.print(measure(exercises, first).report());
    }

    static FairnessMeasurement measure(int exercises, long firstSeed) {
        FairnessMeasurement measured = new FairnessMeasurement();
        ExerciseGenerator generator = new ExerciseGenerator();
        for (long seed = firstSeed; seed < firstSeed + exercises; seed++) {
            double difficulty = seed % DIFFICULTIES / (DIFFICULTIES - 1);
            Exercise exercise = generator.generate(GenerationRequest.anything(seed, difficulty));
            measured.read(exercise);
            measured.guess(exercise, seed);
        }
        return measured;
    }

    List<String> unfair() {
        return unfair;
    }

    int places() {
        return places;
    }

    int unread() {
        return unread;
    }

    double mostGuessed() {
        return mostGuessed;
    }

    String report() {
        return "clear places read: " + places + ", without an edge of their own: " + unread + ", marked down: "
                + unfair.size() + "\n" + String.join("\n", unfair) + "\nmost earned by guessing: "
                + Math.round(1000 * mostGuessed) / 10.0 + " % " + guess + "\n";
    }

    private void read(Exercise exercise) {
        AnswerKey key = marker.demand(exercise);
        Settings start = exercise.start().settings();
        double velocity = exercise.permitted().velocity().statedFraction().orElse(start.velocityFraction());
        List<Double> ranges = exercise.permitted().rangesMetres();
        List<Integer> averages = exercise.permitted().averages();
        for (LineEnd end : exercise.permitted().ends()) {
            for (Stimulus stimulus : exercise.permitted().stimuli()) {
                Settings settings =
                        new Settings(stimulus, velocity, ranges.get(0), 0, averages.get(averages.size() - 1));
                Trace trace = new Reflectometer(exercise.instrument())
                        .withoutNoise(
                                new SimulatedPort(
                                        exercise.cable().seenFrom(end),
                                        exercise.instrument().sourceOhms(),
                                        memory),
                                settings);
                for (EventVisibility sight : VisibilityAnalysis.of(
                        exercise.cable(), exercise.instrument(), settings, end, memory, () -> false)) {
                    for (PlaceVisibility place : sight.places()) {
                        if (place.visibility() == Visibility.CLEAR) {
                            read(key, settings, end, trace, sight, place);
                        }
                    }
                }
            }
        }
    }

    private void read(
            AnswerKey key, Settings settings, LineEnd end, Trace trace, EventVisibility sight, PlaceVisibility place) {
        LineEvent event = key.events().stream()
                .filter(one -> one.is(sight.eventId()))
                .findFirst()
                .orElseThrow();
        double clean = PerfectReader.openEnd(
                cutOpen(key.exercise(), settings, end, place), place.shownMetres() - settings.halfPulseMetres() / 2);
        Optional<PerfectReader.Edge> edge = PerfectReader.near(trace, clean, place.expectedVolts());
        places++;
        if (edge.isEmpty()) {
            unread++;
            return;
        }
        Flag flag = new Flag(
                "A",
                end,
                Math.max(0, edge.get().metres()),
                OptionalDouble.empty(),
                event.kind(),
                event.truth(),
                settings.velocityFraction());
        MarkSheet sheet = marker.mark(
                key.exercise(), new Attempt(key.exercise().id(), "Perfect reader", List.of(flag), settings));
        boolean full = sheet.findings().stream()
                .filter(Finding.Matched.class::isInstance)
                .map(Finding.Matched.class::cast)
                .filter(found -> found.event().equals(event))
                .anyMatch(found ->
                        found.places().get(0).marks() >= found.places().get(0).outOf() - 1e-9);
        if (!full) {
            unfair.add(
                    key.exercise().id() + " " + event.kind() + " " + settings.stimulus() + " from " + end + ": shown "
                            + place.shownMetres() + ", read " + edge.get() + " expected " + place.expectedVolts() + ", "
                            + sheet.findings().stream()
                                    .filter(Finding.Matched.class::isInstance)
                                    .map(found -> ((Finding.Matched) found).places())
                                    .toList());
        }
    }

    private Trace cutOpen(Exercise exercise, Settings settings, LineEnd end, PlaceVisibility place) {
        List<Event> events = new ArrayList<>();
        double length = exercise.cable().lengthMetres();
        double metres = end == LineEnd.NEAR ? place.trueMetres() : length - place.trueMetres();
        Cable tested = exercise.cable().seenFrom(end);
        tested.events().stream().filter(event -> event.endMetres() < metres).forEach(events::add);
        events.add(new BrokenConductor("cut", metres, OptionalDouble.empty()));
        return new Reflectometer(exercise.instrument())
                .withoutNoise(
                        new SimulatedPort(
                                tested.withEvents(events), exercise.instrument().sourceOhms(), memory),
                        settings);
    }

    private void guess(Exercise exercise, long seed) {
        Settings settings = exercise.start().settings();
        List<EventKind> kinds = exercise.cable().events().stream()
                .map(event -> event.kind())
                .distinct()
                .toList();
        for (Verdict verdict : Verdict.values()) {
            EventKind kind = kinds.isEmpty() ? EventKind.SPLICE : kinds.get((int) (seed % kinds.size()));
            List<Flag> flags = new ArrayList<>();
            double length = exercise.cable().lengthMetres();
            double spacing = Math.max(SPACING_METRES, length / Attempt.MOST_FLAGS);
            for (double metres = 0; metres < length && flags.size() < Attempt.MOST_FLAGS; metres += spacing) {
                flags.add(new Flag(
                        letters(flags.size()),
                        LineEnd.NEAR,
                        metres,
                        OptionalDouble.empty(),
                        kind,
                        verdict,
                        settings.velocityFraction()));
            }
            double earned = marker.mark(exercise, new Attempt(exercise.id(), "Guesser", flags, settings))
                    .fraction();
            if (earned > mostGuessed) {
                mostGuessed = earned;
                guess = exercise.id() + " " + kind + " " + verdict;
            }
        }
    }

    private static String letters(int index) {
        String last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letters(index / 26 - 1) + last;
    }
}
