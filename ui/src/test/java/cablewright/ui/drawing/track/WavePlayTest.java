// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.shell.Examples;
import org.junit.jupiter.api.Test;

class WavePlayTest {

    private static final double LIGHT_METRES_PER_SECOND = 299_792_458.0;

    private final WavePlay play = WavePlay.of(Examples.cable(), LineEnd.NEAR, 75, Examples.settings());

    private double shownPeak(int frame) {
        int best = 0;
        for (int i = 0; i < play.places(); i++) {
            best = Math.abs(play.volts(frame, i)) > Math.abs(play.volts(frame, best)) ? i : best;
        }
        return play.shownMetres(best);
    }

    /** The axis is time there and back at the set velocity, so one way the front covers v t, in wet cable too. */
    @Test
    void theOutgoingPulseMovesEvenlyAtTheSetVelocity() {
        double halfPulse = 2.5e-9;
        double spacing = play.shownMetres(1) - play.shownMetres(0);
        for (int frame = 30; play.seconds(frame) < 500e-9; frame += 40) {
            double expected = 0.85 * LIGHT_METRES_PER_SECOND * (play.seconds(frame) - halfPulse);
            double behind = expected - shownPeak(frame);
            // Skin effect holds the middle of the pulse back a little; nothing makes it come early.
            assertTrue(behind > -spacing && behind < 0.01 * expected + spacing, behind + " m behind at " + expected);
        }
    }

    @Test
    void theLastFrameComesAfterTheEchoOfTheEnd() {
        double there = play.shownMetres(play.places() - 1) / (0.85 * LIGHT_METRES_PER_SECOND);
        assertTrue(play.seconds(play.frames() - 1) > 2 * there);
    }
}
