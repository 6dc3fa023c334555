// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.text.Texts;
import cablewright.simulator.reading.CandidateEvent;
import cablewright.ui.desktop.measured.MeasuredViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sweep of a matched line of 40 m that ends in an open: Γ = e^(−j 2ω l/v), as in any textbook on lines. */
class MeasuredScreenTest {

    @TempDir
    private Path folder;

    private final MeasuredViewModel model = new MeasuredViewModel(
            new SimpleObjectProperty<>(LengthUnit.METRES),
            Threads.sameThread(),
            new Texts("cablewright.ui.desktop.shell.desktop", Locale.ROOT));

    private Path sweep() throws IOException {
        return MeasuredExample.sweep(folder);
    }

    @Test
    void sweepOffersWhatItTellsAndItsEndIsACandidate() throws IOException {
        model.open(sweep());
        assertEquals("", model.problemProperty().get());
        assertTrue(model.settingsProperty().get().isPresent());
        assertTrue(
                model.settingsProperty().get().get().permitted().stimuli().stream()
                        .allMatch(stimulus -> stimulus.shortestEdgeSeconds() > 8e-9),
                "a band of 300 MHz tells no edge below 8 samples of 1/600 MHz");
        List<CandidateEvent> candidates = model.candidatesProperty().get();
        assertEquals(1, candidates.size(), candidates.toString());
        assertEquals(40, candidates.get(0).metres().value(), 0.4);
        assertEquals(1, candidates.get(0).heightVolts().value(), 0.05);
    }

    /** A line of the reference's own impedance, open at 40 m: 50 ohm all the way, once the wave is a step. */
    @Test
    void aStepGivesTheImpedanceAtTheCursor() throws IOException {
        model.open(sweep());
        model.settingsProperty().get().get().setShape(false);
        assertTrue(model.impedanceAtCursor().getValue().startsWith("Choose a step"));
        model.settingsProperty().get().get().setShape(true);
        model.axis().moveCursorTo(20);
        String said = model.impedanceAtCursor().getValue();
        Matcher ohms = Pattern.compile(": ([\\d.]+) Ω").matcher(said);
        assertTrue(ohms.find(), said);
        assertEquals(50, Double.parseDouble(ohms.group(1)), 1, said);
    }

    @Test
    void velocityFollowsFromALengthBetweenTheCursors() throws IOException {
        model.open(sweep());
        model.axis().moveCursorTo(40);
        model.traceTrack().aids().secondMetresProperty().set(OptionalDouble.of(0));
        assertTrue(model.traceTrack().aids().between().orElseThrow().contains("40"));
        assertEquals(0.33, model.traceTrack().aids().velocity(20).orElseThrow().fraction(), 0.001);
    }

    @Test
    void keptTraceAndTheSameTraceDontDiffer() throws IOException {
        model.open(sweep());
        model.traceTrack().aids().toggleKept();
        assertTrue(model.traceTrack().aids().differenceTrace().isEmpty());
        assertTrue(model.traceTrack().aids().difference().isPresent());
        model.settingsProperty().get().get().setVelocity(0.7);
        assertEquals(
                0, model.traceTrack().aids().differenceTrace().orElseThrow().voltsAt(20), 1e-6);
        model.traceTrack().aids().toggleKept();
        assertTrue(model.traceTrack().aids().otherProperty().get().isEmpty());
    }

    /** A place 15 m from the other end of 40 m is 25 m from this one. */
    @Test
    void otherEndIsMirrored() throws IOException {
        model.open(sweep());
        model.traceTrack()
                .aids()
                .showOtherEnd(model.traceTrack().traceProperty().get(), 60);
        assertEquals(
                model.traceTrack().traceProperty().get().voltsAt(40.5),
                model.traceTrack()
                        .aids()
                        .otherProperty()
                        .get()
                        .orElseThrow()
                        .trace()
                        .voltsAt(19.5),
                0.02);
    }

    @Test
    void whatIsNoMeasurementIsSaidAndChangesNothing() throws IOException {
        model.open(Files.writeString(folder.resolve("bad.s1p"), "# GHz S RI R 50\n1.0 0.5\n"));
        assertTrue(
                model.problemProperty().get().contains("bad.s1p"),
                model.problemProperty().get());
        assertTrue(model.settingsProperty().get().isEmpty());
    }
}
