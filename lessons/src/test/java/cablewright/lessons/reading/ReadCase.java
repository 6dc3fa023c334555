// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.reading;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.attribution.WavePath;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One trace of a generated cable, with all that could be found on it.
 *
 * @param trace the trace, with noise
 * @param places what lies on the line, with how it shows
 * @param others what else comes back and is no mistake to point at: the line's end and the ends of branches
 * @param ghosts re-reflections
 */
record ReadCase(Trace trace, List<Place> places, List<Echo> others, List<Echo> ghosts) {

    private static final int DIFFICULTIES = 5;

    /**
     * One place of an event.
     *
     * @param eventId the event
     * @param what its kind
     * @param fromSeconds when the wave comes back from its start [s]
     * @param toSeconds when the wave comes back from its end [s]
     * @param visibility whether the trace shows it
     * @param contrastVolts by how much it changes the trace [V]
     */
    record Place(
            String eventId,
            String what,
            double fromSeconds,
            double toSeconds,
            Visibility visibility,
            double contrastVolts) {}

    /**
     * Something else that comes back.
     *
     * @param seconds when [s]
     */
    record Echo(double seconds) {}

    /** Makes the cable of a seed and takes its trace at permitted settings that the seed chooses. */
    static ReadCase of(long seed, ExerciseGenerator generator, PropagationCache memory) {
        double difficulty = (seed % DIFFICULTIES) / (DIFFICULTIES - 1.0);
        Exercise exercise = generator.generate(GenerationRequest.anything(seed, difficulty));
        SplittableRandom random = new SplittableRandom(seed);
        Permitted permitted = exercise.permitted();
        Settings settings = exercise.start()
                .settings()
                .withStimulus(any(random, permitted.stimuli()))
                .withAverages(any(random, permitted.averages()))
                .withRangeMetres(permitted.rangesMetres().get(0));
        return of(exercise.cable(), exercise.instrument(), settings, any(random, permitted.ends()), seed, memory);
    }

    private static <T> T any(SplittableRandom random, List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private static ReadCase of(
            Cable cable, Instrument instrument, Settings settings, LineEnd end, long seed, PropagationCache memory) {
        Cable tested = end == LineEnd.NEAR ? cable : cable.seenFromFarEnd();
        CableProfile profile = CableProfile.of(tested);
        Trace trace = new Reflectometer(instrument)
                .measure(new SimulatedPort(tested, instrument.sourceOhms(), memory), settings, seed);
        List<Place> places = new ArrayList<>();
        for (EventVisibility sight : VisibilityAnalysis.of(cable, instrument, settings, end, memory, () -> false)) {
            Event event = tested.event(sight.eventId()).orElseThrow();
            for (PlaceVisibility place : sight.places()) {
                double from = place.thereAndBackSeconds();
                double to = sight.places().size() == 1 ? 2 * profile.secondsTo(event.endMetres()) : from;
                places.add(new Place(
                        sight.eventId(),
                        sight.kind().id(),
                        from,
                        Math.max(from, to),
                        place.visibility(),
                        place.contrastVolts()));
            }
        }
        List<Echo> others = new ArrayList<>();
        others.add(new Echo(2 * profile.secondsTo(tested.lengthMetres())));
        for (Event event : tested.events()) {
            if (event instanceof BridgedTap tap) {
                Cable branch = tap.branch();
                double beyond = CableProfile.of(branch).secondsTo(branch.lengthMetres());
                others.add(new Echo(2 * (profile.secondsTo(event.startMetres()) + beyond)));
            }
        }
        List<Echo> ghosts = new ArrayList<>();
        for (WavePath path : Attribution.of(cable, instrument, settings, end).ghosts(trace.noiseVolts())) {
            ghosts.add(new Echo(path.arrivalSeconds()));
        }
        return new ReadCase(trace, places, others, ghosts);
    }
}
