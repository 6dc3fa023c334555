// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.making;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.paper.SampledPort;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.wave.Inversion;
import cablewright.simulator.wave.Stimulus;
import cablewright.simulator.wave.Waveform;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a paper shows is what the cable shows, at every permitted setting, to the step of the converter at the highest
 * permitted gain. The reference is the cable itself on a grid of the same period with {@value #FINER} times the samples. It is
 * what comes back that is compared: the outgoing wave is not in a paper, no cable changes it.
 */
class PaperExactnessTest {

    private static final int FINER = 4;

    static Stream<Exercise> exercises() {
        ExerciseGenerator generator = new ExerciseGenerator();
        Stream<Exercise> made = Stream.of(ExerciseFamily.COAX_DROP, ExerciseFamily.TELEPHONE_LOOP)
                .map(family -> generator.generate(new GenerationRequest(5, List.of(family), List.of(), 0.5)));
        return Stream.concat(
                BuiltInLessons.find("harbour-line").orElseThrow().exercises().stream()
                        .limit(3),
                made);
    }

    private static List<Settings> settings(Exercise exercise, Stimulus stimulus) {
        List<Settings> all = new ArrayList<>();
        for (double range : exercise.permitted().rangesMetres()) {
            for (double velocity : new double[] {
                exercise.permitted().velocity().leastFraction(),
                exercise.permitted().velocity().mostFraction()
            }) {
                all.add(exercise.start()
                        .settings()
                        .withStimulus(stimulus)
                        .withRangeMetres(range)
                        .withVelocityFraction(velocity));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void everyPermittedSettingIsExactToTheConvertersStep(Exercise exercise) {
        Lesson lesson = new Lesson("one", "One", "One.", "Invented.", 0.5, List.of(exercise));
        SealedPaper paper = new PaperMaker()
                .make(
                        lesson,
                        new PaperMaker.Terms("Exam", "Rules.", 30, 0.5),
                        ExaminerKey.make().publicKey());
        PaperItem item = paper.items().get(0);
        Instrument instrument = exercise.instrument();
        Reflectometer reflectometer = new Reflectometer(instrument.withOutgoingShare(0));
        double highestGain = exercise.permitted()
                .gainsDecibels()
                .get(exercise.permitted().gainsDecibels().size() - 1);
        for (LineEnd end : exercise.permitted().ends()) {
            SimulatedPort cable = new SimulatedPort(exercise.cable().seenFrom(end), instrument.sourceOhms());
            SampledPort sampled = item.port(end);
            ContourGrid own = sampled.nativeGrid().orElseThrow();
            ContourGrid fine = new ContourGrid(own.dampingPerSecond(), own.periodSeconds(), FINER * own.samples());
            ComplexArray exact = cable.reflection(fine, fine.frequencies(), PaperGrid.shortestEdgeSeconds(exercise));
            for (Stimulus stimulus : exercise.permitted().stimuli()) {
                ComplexArray sent = reflectometer.received(fine, stimulus);
                Waveform truth = Inversion.invert(fine, sent.times(first(exact, sent.count())));
                for (Settings settings : settings(exercise, stimulus)) {
                    Trace shown = reflectometer.withoutNoise(sampled, settings);
                    assertTrue(shown.count() >= instrument.samples() / 2, settings.toString());
                    double steps =
                            worst(shown, truth, instrument.clipVolts(highestGain)) / instrument.stepVolts(highestGain);
                    assertTrue(steps < 1, exercise.id() + ", " + end + ", " + settings + ": off by " + steps);
                }
            }
        }
    }

    private static ComplexArray first(ComplexArray all, int count) {
        return ComplexArray.takingOver(
                Arrays.copyOf(all.copyOfReal(), count), Arrays.copyOf(all.copyOfImaginary(), count));
    }

    /** The largest error [V] where the converter does not clip; the samples of both lie on the same times. */
    private static double worst(Trace shown, Waveform truth, double clip) {
        double worst = 0;
        for (int i = 0; i < shown.count(); i++) {
            double exact = truth.sample((int) Math.rint(i * shown.sampleSeconds() / truth.sampleSeconds()));
            if (Math.abs(exact) <= clip) {
                worst = Math.max(worst, Math.abs(shown.volts(i) - exact));
            }
        }
        return worst;
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void theGridFollowsFromWhatIsPermittedAlone(Exercise exercise) {
        Exercise other =
                BuiltInLessons.find("harbour-line").orElseThrow().exercises().get(0);
        Exercise sameChoicesOtherCable = new Exercise(
                exercise.id(),
                exercise.title(),
                exercise.brief(),
                exercise.cautions(),
                other.cable(),
                exercise.record(),
                exercise.instrument(),
                exercise.start(),
                exercise.permitted(),
                exercise.toleranceMetres(),
                exercise.hints(),
                exercise.explanation(),
                exercise.prediction(),
                exercise.noiseSeed(),
                exercise.endIsGiven());
        assertEquals(PaperGrid.of(exercise), PaperGrid.of(sameChoicesOtherCable));
    }
}
