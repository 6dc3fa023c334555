// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.simulator.cable.Run;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.List;
import org.junit.jupiter.api.Test;

class VelocitySettingTest {

    private static final CableType FAST = TestLines.lossless(75, 0.85 * 299_792_458.0);
    private static final CableType SLOW = TestLines.lossless(75, 0.66 * 299_792_458.0);

    /** physics.md §14: 0.82 set for a true 0.85 cable at 100 m shows 96.470588 m. */
    @Test
    void wrongVelocityShowsAHundredMetresAsNinetySix() {
        VelocitySetting setting = new VelocitySetting(List.of(new Run(FAST, 125)), 0.82, 5e-9);
        assertEquals(100, setting.faultMetres(), 1e-9);
        VelocitySetting.Outcome outcome = setting.outcome();
        assertEquals(96.470588, outcome.fault().shownMetres(), 1e-6);
        assertEquals(-3.529412, outcome.fault().errorMetres(), 1e-6);
        assertEquals(0.85, outcome.rightFraction(), 1e-12);
    }

    /** By hand: 60 m at 0.85 and 40 m at 0.66 take as long as 60 + 40 · 0.85/0.66 m at 0.85. */
    @Test
    void slowerRunIsShownLonger() {
        VelocitySetting setting = new VelocitySetting(List.of(new Run(FAST, 60), new Run(SLOW, 40)), 0.85, 5e-9);
        assertEquals(60 + 40 * 0.85 / 0.66, setting.shownMetres(100), 1e-9);
        assertEquals(60, setting.outcome().joints().get(0).shownMetres(), 1e-9);
    }

    @Test
    void traceDipsWhereTheFaultIsSaidToShow() {
        CableType drop = Catalogue.standard().type("drop-6-foam");
        CableType solid = Catalogue.standard().type("coax-6-solid");
        VelocitySetting.Outcome outcome =
                new VelocitySetting(List.of(new Run(drop, 60), new Run(solid, 40)), 0.85, 5e-9).outcome();
        double shown = outcome.fault().shownMetres();
        int dip = outcome.trace().largestBetween(shown - 3, shown + 3);
        // The top of a pulse stands after its half height, by some 0.6 of half the pulse.
        assertEquals(shown + 0.4, outcome.trace().x(dip), 0.4);
    }
}
