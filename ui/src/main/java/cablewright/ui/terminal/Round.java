// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.ReadingTask;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.format.ExerciseFingerprint;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** One exercise under way: what is set, what is flagged, and what became of it. Knows no words and no screen. */
final class Round {

    private static final int LETTERS = 26;

    private final ReadingTask task;
    private final Optional<Exercise> marked;
    private final Function<LineEnd, PortResponse> portAt;
    private final Reflectometer reflectometer;
    private final Map<LineEnd, PortResponse> ports = new EnumMap<>(LineEnd.class);
    private final List<Flag> flags = new ArrayList<>();
    private final Instant startedAt;
    private Settings settings;
    private LineEnd end;
    private int hintsTaken;
    private Optional<String> predicted = Optional.empty();
    private Optional<String> reason = Optional.empty();
    private Optional<Trace> trace = Optional.empty();
    private Optional<Attempt> attempt = Optional.empty();
    private Optional<MarkSheet> sheet = Optional.empty();

    /** Opens an exercise, which can be handed in and marked. */
    Round(Exercise exercise, Instant startedAt) {
        this(exercise, Optional.of(exercise), portsOf(exercise), startedAt);
    }

    /** Opens a task that is marked elsewhere. */
    Round(ReadingTask task, Function<LineEnd, PortResponse> portAt, Instant startedAt) {
        this(task, Optional.empty(), portAt, startedAt);
    }

    private Round(
            ReadingTask task, Optional<Exercise> marked, Function<LineEnd, PortResponse> portAt, Instant startedAt) {
        this.task = task;
        this.marked = marked;
        this.portAt = portAt;
        this.startedAt = startedAt;
        this.reflectometer = new Reflectometer(task.instrument());
        this.settings = task.start().settings();
        this.end = task.start().end();
    }

    private static Function<LineEnd, PortResponse> portsOf(Exercise exercise) {
        PropagationCache memory = new PropagationCache();
        return tested -> new SimulatedPort(
                exercise.cable().seenFrom(tested), exercise.instrument().sourceOhms(), memory);
    }

    /** What is shown of the line before anything is handed in. */
    ReadingTask task() {
        return task;
    }

    /** The exercise with its cable; only a round that is marked here has it. */
    Exercise exercise() {
        return marked.orElseThrow();
    }

    /** Puts flags and settings back that were kept. */
    void restore(List<Flag> kept, Settings others) {
        flags.clear();
        flags.addAll(kept);
        settings = others;
        trace = Optional.empty();
    }

    Settings settings() {
        return settings;
    }

    LineEnd end() {
        return end;
    }

    int hintsTaken() {
        return hintsTaken;
    }

    Optional<MarkSheet> sheet() {
        return sheet;
    }

    Optional<Attempt> attempt() {
        return attempt;
    }

    /** Whether a question is open that must be answered before the trace is shown. */
    boolean asksFirst() {
        return question().isPresent() && predicted.isEmpty();
    }

    void set(Settings others) {
        double ratio = others.velocityFraction() / settings.velocityFraction();
        if (ratio != 1) {
            flags.replaceAll(flag -> toldAt(flag, flag.velocityFraction() * ratio, ratio));
        }
        settings = others;
        trace = Optional.empty();
    }

    void joinTo(LineEnd other) {
        end = other;
        trace = Optional.empty();
    }

    /** A flag stays at its time on the trace: its metres change with the velocity. */
    private static Flag toldAt(Flag flag, double velocity, double ratio) {
        OptionalDouble stop = flag.endMetres().isPresent()
                ? OptionalDouble.of(flag.endMetres().getAsDouble() * ratio)
                : flag.endMetres();
        return new Flag(
                flag.letter(),
                flag.end(),
                flag.startMetres() * ratio,
                stop,
                flag.kind(),
                flag.verdict(),
                velocity,
                flag.stimulus());
    }

    List<Flag> flags() {
        return List.copyOf(flags);
    }

    Flag add(Instruction.SetFlag set) {
        if (flags.size() >= Attempt.MOST_FLAGS) {
            throw new Refused("mostFlags", Attempt.MOST_FLAGS);
        }
        Flag flag = new Flag(
                freeLetter(),
                end,
                set.startMetres(),
                set.endMetres(),
                set.kind(),
                set.verdict(),
                settings.velocityFraction(),
                Optional.of(settings.stimulus()));
        flags.add(flag);
        flags.sort(Comparator.comparingInt((Flag f) -> f.letter().length()).thenComparing(Flag::letter));
        return flag;
    }

    private String freeLetter() {
        int number = 0;
        while (taken(letter(number))) {
            number++;
        }
        return letter(number);
    }

    private boolean taken(String letter) {
        return flags.stream().anyMatch(flag -> flag.letter().equals(letter));
    }

    private static String letter(int number) {
        String last = String.valueOf((char) ('A' + number % LETTERS));
        return number < LETTERS ? last : letter(number / LETTERS - 1) + last;
    }

    void remove(String letter) {
        if (!flags.removeIf(flag -> flag.letter().equals(letter))) {
            throw new Refused("noFlag", letter);
        }
    }

    void takeHint() {
        hintsTaken++;
    }

    void predict(String choiceId, Optional<String> reasonId) {
        predicted = Optional.of(choiceId);
        reason = reasonId;
    }

    Optional<Prediction> question() {
        return marked.flatMap(Exercise::prediction);
    }

    /** What the instrument shows at what is set. */
    Trace trace() {
        if (trace.isEmpty()) {
            trace = Optional.of(reflectometer.measure(port(), settings, task.noiseSeed()));
        }
        return trace.get();
    }

    private PortResponse port() {
        return ports.computeIfAbsent(end, portAt);
    }

    /** Hands the flags in and has them marked. */
    MarkSheet commit(Marker marker, String trainee, Instant now) {
        Exercise exercise = exercise();
        Attempt handedIn = new Attempt(
                exercise.id(),
                trainee,
                flags,
                settings,
                hintsTaken,
                predicted,
                reason,
                Optional.of(startedAt),
                Optional.of(now),
                Optional.of(ExerciseFingerprint.of(exercise)));
        attempt = Optional.of(handedIn);
        sheet = Optional.of(marker.mark(exercise, handedIn));
        return sheet.get();
    }
}
