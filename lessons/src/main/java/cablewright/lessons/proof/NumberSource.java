// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.proof;

import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.EventEchoes;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import java.util.Locale;

/**
 * Works out a number that a text states, from the cable and the settings that it names. What stands behind the bar of a marked
 * quantity is one of these; PULSE is a pulse such as {@code 10ns} or a step such as {@code step:2ns}, EVENT the name of an event,
 * followed by {@code .end} for its farther edge, and {@code far} at the end means the far end of the line.
 *
 * <ul>
 *   <li>{@code height EVENT PULSE [far]}: first lobe by which the event changes the trace [%]
 *   <li>{@code shown EVENT PULSE [far]}: where its edge is half-way up or down [m]
 *   <li>{@code apparent EVENT PULSE [far]}: impedance that a reader works out from the height and the loss to it [Ω]
 *   <li>{@code ratio EVENT PULSE [far]}: its height over that of a full echo from there [%]
 *   <li>{@code way EVENT PULSE [far]}: loss there and back for this pulse [dB]; {@code full …}: height of a full echo from there [%]
 *   <li>{@code peak FROM TO PULSE [far]}: the trace where it is farthest from zero between two shown places [%]
 *   <li>{@code level AT PULSE [far]}: the trace at a shown place [%]
 *   <li>{@code at EVENT}, {@code length EVENT}: true place or length [m]; {@code length line}
 *   <li>{@code ohms EVENT}, {@code speed EVENT}: impedance [Ω] and velocity [%] that a condition leaves; {@code line} for the cable's own
 *   <li>{@code loss METRES FREQUENCY}: one way [dB]; {@code back METRES}: time there and back [ns]
 *   <li>{@code half PULSE}, {@code pulse PULSE}: half and whole of a pulse on the cable [m]
 *   <li>{@code noise AVERAGES}: noise that averaging leaves [%]
 *   <li>{@code reflection Z Z0} [%], {@code returnloss Z Z0} [dB]; {@code decibels PERCENT} [dB]
 *   <li>{@code series PERCENT Z0}: resistance in series that reflects so much [Ω]; {@code across PERCENT Z0}: the same across the line
 *   <li>{@code scale METRES SET TRUE}: where a place shows at a wrong velocity [m]
 *   <li>{@code given}: a value of the record or of an instrument's setting, nothing to work out
 * </ul>
 */
final class NumberSource {

    private static final double PER_CENT = 100;

    /** For arithmetic, which needs no cable. */
    static final NumberSource NONE = new NumberSource(null, null, null);

    private final Cable cable;
    private final Instrument instrument;
    private final Settings settings;
    private final PropagationCache memory = new PropagationCache();

    private NumberSource(Cable cable, Instrument instrument, Settings settings) {
        this.cable = cable;
        this.instrument = instrument;
        this.settings = settings;
    }

    static NumberSource of(LiveFigure figure) {
        return new NumberSource(figure.cable(), figure.measuredBy(), figure.settings());
    }

    /** At the velocity that is stated, or with which the exercise opens, and the widest range. */
    static NumberSource of(Exercise exercise) {
        List<Double> ranges = exercise.permitted().rangesMetres();
        Settings start = exercise.start().settings();
        double velocity = exercise.permitted().velocity().statedFraction().orElse(start.velocityFraction());
        return new NumberSource(
                exercise.cable(),
                exercise.instrument(),
                start.withRangeMetres(ranges.get(ranges.size() - 1)).withVelocityFraction(velocity));
    }

    /**
     * Works out a number.
     *
     * @throws IllegalArgumentException if the words are none of those above
     */
    double value(String words) {
        List<String> all = List.of(words.split(" "));
        LineEnd end = all.get(all.size() - 1).equals("far") ? LineEnd.FAR : LineEnd.NEAR;
        try {
            return cable == null ? arithmetic(all) : value(all, end);
        } catch (IndexOutOfBoundsException | NumberFormatException e) {
            throw new IllegalArgumentException("\"" + words + "\" lacks a word or has a wrong number", e);
        }
    }

    private double value(List<String> w, LineEnd end) {
        return switch (w.get(0)) {
            case "height" -> PER_CENT * echo(w.get(1), stimulus(w.get(2)), end).firstVolts();
            case "shown" ->
                settings.metresThereAndBack(
                        echo(w.get(1), stimulus(w.get(2)), end).halfWaySeconds());
            case "apparent" ->
                facts(w.get(1), stimulus(w.get(2)), end).apparentOhms().orElseThrow();
            case "way" ->
                facts(w.get(1), stimulus(w.get(2)), end).lossDecibels().orElseThrow();
            case "full" ->
                PER_CENT
                        * Math.pow(
                                10,
                                -facts(w.get(1), stimulus(w.get(2)), end)
                                                .lossDecibels()
                                                .orElseThrow()
                                        / 20);
            case "ratio" ->
                PER_CENT
                        * facts(w.get(1), stimulus(w.get(2)), end).coefficient().orElseThrow();
            case "peak" -> PER_CENT * peak(number(w.get(1)), number(w.get(2)), trace(stimulus(w.get(3)), end));
            case "level" -> level(number(w.get(1)), trace(stimulus(w.get(2)), end));
            case "at" ->
                isFarther(w.get(1))
                        ? event(w.get(1)).endMetres()
                        : event(w.get(1)).startMetres();
            case "length" ->
                isLine(w.get(1))
                        ? cable.lengthMetres()
                        : event(w.get(1)).endMetres() - event(w.get(1)).startMetres();
            case "ohms" -> section(w.get(1)).impedanceOhms();
            case "speed" -> PER_CENT * section(w.get(1)).velocityFraction();
            case "loss" -> number(w.get(1)) * section("line").attenuationDecibelPerMetreAt(hertz(w.get(2)));
            case "back" ->
                2e9 * number(w.get(1)) / (settings.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
            case "half" -> settings.withStimulus(stimulus(w.get(1))).halfPulseMetres();
            case "pulse" -> 2 * settings.withStimulus(stimulus(w.get(1))).halfPulseMetres();
            case "noise" -> PER_CENT * instrument.noiseVoltsAfter(Integer.parseInt(w.get(1)));
            default -> arithmetic(w);
        };
    }

    private static double arithmetic(List<String> w) {
        double first = number(w.get(1));
        double second = w.size() > 2 ? number(w.get(2)) : Double.NaN;
        return switch (w.get(0)) {
            case "reflection" -> PER_CENT * (first - second) / (first + second);
            case "returnloss" -> -20 * Math.log10(Math.abs((first - second) / (first + second)));
            case "decibels" -> 20 * Math.log10(Math.abs(first) / PER_CENT);
            case "series" -> 2 * second * first / (PER_CENT - first);
            case "across" -> second * (PER_CENT / first - 1) / 2;
            case "scale" -> first * second / number(w.get(3));
            default -> throw new IllegalArgumentException("\"" + w.get(0) + "\" is no source of a number");
        };
    }

    private static double number(String word) {
        return Double.parseDouble(word);
    }

    private static double hertz(String word) {
        return 1e6 * number(word.replace("MHz", ""));
    }

    private static Stimulus stimulus(String word) {
        boolean step = word.startsWith("step:");
        double seconds = 1e-9 * number(word.substring(step ? 5 : 0).replace("ns", ""));
        return step ? new RaisedCosineStep(seconds) : new HalfSine(seconds);
    }

    private static boolean isLine(String word) {
        return word.equals("line");
    }

    private static boolean isFarther(String word) {
        return word.endsWith(".end");
    }

    private Event event(String word) {
        String id = isFarther(word) ? word.substring(0, word.length() - 4) : word;
        return cable.event(id).orElseThrow(() -> new IllegalArgumentException("the cable has no event \"" + id + "\""));
    }

    private CrossSection section(String word) {
        if (isLine(word)) {
            return cable.runs().get(0).type().section();
        }
        Event event = event(word);
        double sound = cable.runAt(event.startMetres()).type().section().impedanceOhms();
        return CableProfile.of(cable).pieces().stream()
                .filter(piece -> piece.madeBy().contains(event.id()))
                .map(CableProfile.Piece::section)
                .max((a, b) -> Double.compare(Math.abs(a.impedanceOhms() - sound), Math.abs(b.impedanceOhms() - sound)))
                .orElseThrow(() -> new IllegalArgumentException("\"" + word + "\" changes no length of the cable"));
    }

    private EventEcho echo(String word, Stimulus stimulus, LineEnd end) {
        List<EventEcho> echoes = new EventEchoes(cable, instrument, settings.withStimulus(stimulus), end, memory)
                .of(event(word).id());
        return echoes.get(isFarther(word) ? 1 : 0);
    }

    private EventFacts facts(String word, Stimulus stimulus, LineEnd end) {
        Settings set = settings.withStimulus(stimulus);
        List<EventVisibility> sights = VisibilityAnalysis.of(cable, instrument, set, end, memory, () -> false).stream()
                .filter(sight -> sight.eventId().equals(event(word).id()))
                .toList();
        return EventFacts.of(cable, instrument, set, end, sights).get(isFarther(word) ? 1 : 0);
    }

    private Trace trace(Stimulus stimulus, LineEnd end) {
        return Measurement.at(end, cable, instrument, memory).withoutNoise(settings.withStimulus(stimulus));
    }

    private static double peak(double fromMetres, double toMetres, Trace trace) {
        double most = 0;
        for (int i = trace.indexNear(fromMetres); i <= trace.indexNear(toMetres); i++) {
            most = Math.abs(trace.volts(i)) > Math.abs(most) ? trace.volts(i) : most;
        }
        return most;
    }

    private static double level(double metres, Trace trace) {
        return PER_CENT * trace.volts(trace.indexNear(metres));
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "numbers of \"%s\"", cable.title());
    }
}
