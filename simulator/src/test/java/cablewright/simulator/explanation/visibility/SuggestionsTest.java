// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import static cablewright.simulator.TestCables.cable;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.wave.HalfSine;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SuggestionsTest {

    private final Instrument instrument = Instrument.usual(75);

    private Map<String, Suggestion> suggested(Settings settings, Event... events) {
        Cable line = cable(Catalogue.standard().type("hardline-500"), 200, FarEnd.Terminated.byOhms(75), events);
        return Suggestions.of(
                line,
                instrument,
                settings,
                LineEnd.NEAR,
                VisibilityAnalysis.of(line, instrument, settings, LineEnd.NEAR),
                () -> false);
    }

    private static Settings pulse(double width) {
        return new Settings(new HalfSine(width), 0.87, 250, 0, 16);
    }

    /** A change over metres reflects in proportion to pulse length over its own length, so a longer pulse shows it. */
    @Test
    void longerPulseIsSuggestedForGradualDamage() {
        Suggestion suggestion = suggested(pulse(2e-9), new GradualDamage("g", 90, 40, 0.97, Profile.RAISED_COSINE))
                .get("g");
        assertTrue(suggestion.settings().stimulus().resolutionSeconds() > 2e-9, suggestion.toString());
        assertEquals(Visibility.CLEAR, suggestion.visibility());
    }

    @Test
    void shorterPulseIsSuggestedForTwoNeighbours() {
        Suggestion suggestion = suggested(
                        pulse(100e-9),
                        new TouchingConductors("a", 100, OptionalDouble.of(300)),
                        new TouchingConductors("b", 104, OptionalDouble.of(300)))
                .get("b");
        assertTrue(suggestion.settings().halfPulseMetres() < 4, suggestion.toString());
    }

    @Test
    void otherEndIsSuggestedForWhatAnOpenHides() {
        Suggestion suggestion = suggested(
                        pulse(10e-9),
                        new BrokenConductor("open", 60, OptionalDouble.empty()),
                        new TouchingConductors("x", 120, OptionalDouble.of(200)))
                .get("x");
        assertEquals(LineEnd.FAR, suggestion.end());
    }

    @Test
    void whatIsClearNeedsNoSuggestion() {
        assertFalse(suggested(pulse(10e-9), new TouchingConductors("x", 120, OptionalDouble.of(200)))
                .containsKey("x"));
    }
}
