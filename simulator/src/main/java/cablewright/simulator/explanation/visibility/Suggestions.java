// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Which setting would show an event that is not clear: other pulse widths cost least and come first, then more
 * averaging, then the other end; of widths the least change first.
 */
public final class Suggestions {

    private static final double[] WIDTHS = {
        0.5e-9, 1e-9, 2e-9, 5e-9, 10e-9, 25e-9, 50e-9, 100e-9, 250e-9, 500e-9, 1e-6, 2.5e-6, 5e-6, 10e-6
    };
    private static final int MANY_AVERAGES = 4096;
    private static final int SHORTEST_SAMPLES = 2;

    private final Cable cable;
    private final Instrument instrument;
    private final Settings settings;
    private final LineEnd end;

    private Suggestions(Cable cable, Instrument instrument, Settings settings, LineEnd end) {
        this.cable = cable;
        this.instrument = instrument;
        this.settings = settings;
        this.end = end;
    }

    private record View(Settings settings, LineEnd end) {}

    /**
     * Looks for settings that show what the present ones don't.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param settings what is set
     * @param end the end that is tested
     * @param sights how the events show at these settings
     * @param cancelled asked before each try; once true, what was found so far is returned
     * @return the best setting found for each event that is not clear; an event that nothing shows is not in it
     */
    public static Map<String, Suggestion> of(
            Cable cable,
            Instrument instrument,
            Settings settings,
            LineEnd end,
            List<EventVisibility> sights,
            BooleanSupplier cancelled) {
        return new Suggestions(cable, instrument, settings, end).search(sights, cancelled);
    }

    private Map<String, Suggestion> search(List<EventVisibility> sights, BooleanSupplier cancelled) {
        Set<String> open = new LinkedHashSet<>();
        Map<String, Visibility> best = new LinkedHashMap<>();
        for (EventVisibility sight : sights) {
            if (sight.visibility() != Visibility.CLEAR) {
                open.add(sight.eventId());
                best.put(sight.eventId(), sight.visibility());
            }
        }
        Map<String, Suggestion> found = new LinkedHashMap<>();
        for (View view : views()) {
            if (open.isEmpty() || cancelled.getAsBoolean()) {
                break;
            }
            PropagationCache memory = new PropagationCache();
            for (EventVisibility sight :
                    VisibilityAnalysis.of(cable, instrument, view.settings(), view.end(), memory, cancelled)) {
                String id = sight.eventId();
                boolean better = open.contains(id) && sight.visibility().compareTo(best.get(id)) < 0;
                if (better) {
                    best.put(id, sight.visibility());
                    found.put(id, new Suggestion(id, view.settings(), view.end(), sight.visibility()));
                }
                if (better && sight.visibility() == Visibility.CLEAR) {
                    open.remove(id);
                }
            }
        }
        return found;
    }

    private List<View> views() {
        LineEnd other = end == LineEnd.NEAR ? LineEnd.FAR : LineEnd.NEAR;
        List<View> views = new ArrayList<>();
        for (LineEnd from : List.of(end, other)) {
            for (int averages : averages()) {
                for (Stimulus stimulus : stimuli()) {
                    Settings tried = settings.withStimulus(stimulus)
                            .withRangeMetres(range())
                            .withAverages(averages);
                    views.add(new View(tried, from));
                }
            }
        }
        return views;
    }

    private Set<Integer> averages() {
        return new LinkedHashSet<>(List.of(settings.averages(), Math.max(MANY_AVERAGES, settings.averages())));
    }

    /** The present stimulus, then pulses by how little they differ from it, none shorter than what the range can sample. */
    private List<Stimulus> stimuli() {
        double record = settings.secondsThereAndBack(range());
        double shortest = SHORTEST_SAMPLES * record / instrument.samples();
        double present = settings.stimulus().resolutionSeconds();
        List<Stimulus> stimuli = new ArrayList<>();
        stimuli.add(settings.stimulus());
        Arrays.stream(WIDTHS)
                .filter(width -> width >= shortest && width <= record / 4 && width != present)
                .boxed()
                .sorted(Comparator.comparingDouble(width -> Math.abs(Math.log(width / present))))
                .map(HalfSine::new)
                .forEach(stimuli::add);
        return stimuli;
    }

    /** The range that is set, or one that holds the cable where it is too short. */
    private double range() {
        return Math.max(settings.rangeMetres(), 1.1 * cable.lengthMetres());
    }
}
