// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.Waveform;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GradualDamageMapTest {

    private static final CableType DROP = Catalogue.standard().type("drop-6-foam");

    private static DamageMapSettings wanted(double pulseSeconds, double damageMetres, int cells) {
        Settings settings = new Settings(new HalfSine(pulseSeconds), 0.85, 400, 0, 64);
        return new DamageMapSettings(
                DROP,
                Instrument.usual(75),
                settings,
                Profile.RAISED_COSINE,
                damageMetres,
                0.002,
                0.5,
                300,
                cells,
                cells);
    }

    private static DamageMap map(DamageMapSettings wanted) {
        return GradualDamageMap.compute(wanted, MapListener.none(), () -> false).orElseThrow();
    }

    /** The short way through factors must say what the whole cable says, traced with and without its damage. */
    @ParameterizedTest
    @CsvSource({"5e-9, 1", "2e-9, 4", "25e-9, 3", "100e-9, 20"})
    void everyCellSaysWhatTheWholeCableSays(double pulseSeconds, double damageMetres) {
        DamageMapSettings wanted = wanted(pulseSeconds, damageMetres, 12);
        DamageMap map = map(wanted);
        for (int row = 1; row < 12; row += 4) {
            for (int column = 0; column < 12; column += 3) {
                PlaceVisibility whole = VisibilityAnalysis.of(
                                wanted.cableAt(row, column), wanted.instrument(), wanted.settings(), LineEnd.NEAR)
                        .get(0)
                        .best();
                String cell = "row " + row + ", column " + column;
                double contrast = whole.contrastVolts();
                assertEquals(contrast, map.contrastVolts(row, column), 0.02 * contrast + 1e-6, cell);
                assertEquals(whole.visibility(), map.visibility(row, column), cell);
                assertEquals(whole.reason(), map.reason(row, column), cell);
            }
        }
    }

    /** The compiler takes deeper damage in more steps, each number of which errs a little differently. */
    @ParameterizedTest
    @CsvSource({"0.0021", "0.01", "0.1", "0.3", "0.49"})
    void echoOfASeverityBetweenTheNodesIsThatOfTheCableItself(double change) {
        DamageEchoes echoes = new DamageEchoes(wanted(5e-9, 4, 16), 100e-9);
        ComplexArray near = echoes.toDistance(20);
        Waveform direct = echoes.echo(echoes.ofSeverity(change), near, 20);
        Waveform between = echoes.echo(new SeverityTable(echoes, 0.002, 0.5, () -> false).ofSeverity(change), near, 20);
        double largest = 0;
        double off = 0;
        for (int i = 0; i < direct.count(); i++) {
            largest = Math.max(largest, Math.abs(direct.sample(i)));
            off = Math.max(off, Math.abs(direct.sample(i) - between.sample(i)));
        }
        assertEquals(0, off / largest, 3e-3);
    }

    /** On a line without loss neither place nor noise changes with distance, so the lines on the map run level. */
    @Test
    void boundariesOnALosslessLineRunLevelWhereTheContrastPassesItsThreshold() {
        CableType lossless = Catalogue.standard().type("lossless-75");
        Settings settings = new Settings(new HalfSine(5e-9), 0.85, 200, 0, 64);
        DamageMap map = map(new DamageMapSettings(
                lossless, Instrument.usual(75), settings, Profile.TRIANGLE, 5, 0.002, 0.5, 120, 32, 32));
        for (Visibility least : new Visibility[] {Visibility.CLEAR, Visibility.MARGINAL}) {
            double sigmas = least == Visibility.CLEAR ? 6 : 3;
            for (MapBoundary.Segment segment : MapBoundary.of(map, least)) {
                if (segment.fromColumn() > 3 && segment.toColumn() > 3) {
                    assertEquals(segment.fromRow(), segment.toRow(), 0.05);
                    int below = (int) segment.fromRow();
                    assertTrue(map.contrastVolts(below, 20) <= sigmas * map.noiseVolts() * 1.01);
                    assertTrue(map.contrastVolts(below + 1, 20) >= sigmas * map.noiseVolts() * 0.99);
                }
            }
            assertTrue(MapBoundary.of(map, least).size() >= 28);
        }
    }

    /**
     * physics.md §7, Pozar, Microwave Engineering, 4th ed., sec. 5.8 (from memory): a change spread over L reflects
     * ½ ln r · min(1, w v/(2L)) of a rectangular pulse, so twice the length halves the height.
     */
    @Test
    void damageTwiceAsLongReflectsHalfAsMuch() {
        CableType lossless = Catalogue.standard().type("lossless-75");
        double[] heights = new double[2];
        for (int i = 0; i < 2; i++) {
            Settings settings = new Settings(new HalfSine(5e-9), 0.85, 200, 0, 64);
            DamageMapSettings wanted = new DamageMapSettings(
                    lossless, Instrument.usual(75), settings, Profile.TRIANGLE, 20 * (i + 1), 0.01, 0.2, 120, 4, 4);
            heights[i] = map(wanted).contrastVolts(2, 3);
        }
        assertEquals(0.5, heights[1] / heights[0], 0.02);
    }

    @Test
    void coarseMapComesFirstAndProgressReachesTheEnd() {
        AtomicReference<DamageMap> coarse = new AtomicReference<>();
        AtomicInteger most = new AtomicInteger();
        MapListener listener = new MapListener() {
            @Override
            public void progress(int done, int of) {
                assertEquals(256, of);
                most.accumulateAndGet(done, Math::max);
            }

            @Override
            public void coarse(DamageMap map) {
                coarse.set(map);
            }
        };
        DamageMap fine = GradualDamageMap.compute(wanted(5e-9, 2, 16), listener, () -> false)
                .orElseThrow();
        assertFalse(coarse.get().isComplete());
        assertTrue(fine.isComplete());
        assertEquals(256, most.get());
        assertEquals(fine.contrastVolts(2, 2), coarse.get().contrastVolts(0, 3));
        assertEquals(fine.visibility(14, 6), coarse.get().visibility(15, 5));
    }

    @Test
    void cancelledMapIsNotHandedOut() {
        assertEquals(Optional.empty(), GradualDamageMap.compute(wanted(5e-9, 2, 16), MapListener.none(), () -> true));
    }

    @Test
    void worseDamageAtTheSamePlaceIsNeverHarderToSeeOutsideTheBlindZone() {
        DamageMap map = map(wanted(10e-9, 3, 24));
        for (int column = 3; column < 24; column++) {
            for (int row = 1; row < 24; row++) {
                assertTrue(map.visibility(row, column).compareTo(map.visibility(row - 1, column)) <= 0);
            }
        }
        assertEquals(Optional.of(HiddenReason.BELOW_NOISE), map.reason(0, 20));
        assertEquals(Visibility.CLEAR, map.visibility(23, 4));
        assertTrue(map.share(Visibility.CLEAR) > 0.1 && map.share(Visibility.HIDDEN) > 0.1);
    }
}
