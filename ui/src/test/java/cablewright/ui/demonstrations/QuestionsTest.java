// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.wave.HalfSine;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the questions claim, worked out from traces at the figures that the questions name. */
class QuestionsTest {

    private static double largest(Profile profile) {
        CableType type = Catalogue.standard().type("drop-6-foam");
        Cable sound = new Cable("t", List.of(new Run(type, 60)), List.of(), new FarEnd.Endless(type));
        Cable hurt = sound.withEvents(List.of(new GradualDamage("g", 20, 6, 0.9, profile)));
        Settings settings = new Settings(new HalfSine(2e-9), 0.83, 60, 0, 1);
        Measurement measurement = Measurement.at(sound, Instrument.usual(75));
        Trace without = measurement.withoutNoise(settings);
        Trace with = measurement.of(hurt).withoutNoise(settings);
        double most = 0;
        for (int i = 0; i < with.count(); i++) {
            most = Math.max(most, Math.abs(with.volts(i) - without.volts(i)));
        }
        return most;
    }

    @Test
    void sixMetresOfDriftShowSeveralTimesLessThanASharpChange() {
        double ratio = largest(Profile.FLAT) / largest(Profile.RAISED_COSINE);
        assertTrue(ratio > 5, "by " + ratio);
    }

    @Test
    void figuresOpenOnTheCaseThatTheQuestionNames() {
        assertEquals(6, opening(new DamageByDegrees(), "length"), 0);
        assertEquals(2e-9, opening(new DamageByDegrees(), "pulse"), 0);
        assertEquals(400, opening(new FarAndBlunt(), "distance"), 0);
    }

    private static double opening(Demonstration demonstration, String control) {
        return Values.initial(demonstration.controls()).get(control);
    }
}
