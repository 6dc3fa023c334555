// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.line.CableType;
import java.util.List;
import org.junit.jupiter.api.Test;

class GhostPathsTest {

    private static final double V = 0.85 * 299_792_458.0;
    private static final CableType LOSSLESS = TestLines.lossless(75, V);
    private static final GhostPaths TWO = new GhostPaths(LOSSLESS, 100, 30, 50, -0.3, 5e-9);

    private static double heightAt(Curve trace, double metres) {
        return trace.y(trace.largestBetween(metres - 1, metres + 2));
    }

    /** Bounce diagram by hand (Bewley): ρ, ρ(1+ρ)², ρ³(1+ρ)² at 30, 50 and 2·50 − 30 m. */
    @Test
    void echoesAndGhostStandWhereAndAsHighAsTheBounceDiagramSays() {
        GhostPaths.Outcome outcome = TWO.outcome();
        assertEquals(70, outcome.ghostMetres());
        assertEquals(-0.3, outcome.firstEcho(), 1e-12);
        assertEquals(-0.147, outcome.secondEcho(), 1e-12);
        assertEquals(-0.01323, outcome.ghostEcho(), 1e-12);
        // The receiver rounds the tops by some per cent, all alike.
        double rounding = heightAt(outcome.trace(), 30) / -0.3;
        assertEquals(1, rounding, 0.03);
        assertEquals(-0.147 * rounding, heightAt(outcome.trace(), 50), 2e-3);
        assertEquals(-0.01323 * rounding, heightAt(outcome.trace(), 70), 4e-4);
    }

    @Test
    void fromTheOtherEndTheEventsKeepTheirPlacesAndTheGhostDoesNot() {
        GhostPaths.Outcome outcome = TWO.outcome();
        // 50 m and 30 m from the near end are 50 m and 70 m from the far one; the ghost is at 2·70 − 50 = 90 m.
        assertTrue(heightAt(outcome.farTrace(), 50) < -0.25);
        assertTrue(heightAt(outcome.farTrace(), 70) < -0.12);
        assertTrue(heightAt(outcome.farTrace(), 90) < -0.01);
        assertEquals(100 - 90, outcome.ghostFromFarMetres());
    }

    @Test
    void latticeBringsTheSameEchoesHomeInTheSameOrder() {
        List<BounceRay> home = TWO.outcome().rays().stream()
                .filter(ray -> ray.toMetres() == 0)
                .sorted((a, b) -> Double.compare(a.toSeconds(), b.toSeconds()))
                .toList();
        assertEquals(-0.3, home.get(0).amplitude(), 1e-12);
        assertEquals(60 / V, home.get(0).toSeconds(), 1e-15);
        assertEquals(-0.147, home.get(1).amplitude(), 1e-12);
        assertEquals(-0.01323, home.get(2).amplitude(), 1e-12);
        assertEquals(140 / V, home.get(2).toSeconds(), 1e-15);
        assertEquals(3, home.get(2).bounces());
    }
}
