// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.lookalike;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.cable.Run;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.port.SimulatedPort;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of damage can be laid over a trace, in sizes that run from barely there to plain. */
class KindAtPlaceTest {

    private static final double[] SWEEP = {1e6, 1e7, 3e7, 1e8};

    static Stream<EventKind> damage() {
        return Arrays.stream(EventKind.values()).filter(kind -> kind.nature() == Nature.DAMAGE);
    }

    @ParameterizedTest
    @MethodSource("damage")
    void everyKindOfDamageHasASizeThatGrows(EventKind kind) {
        String type = kind == EventKind.OFF_CENTRE ? "drop-6-foam" : "cat-5e";
        Cable plain =
                new Cable("plain", List.of(new Run(Catalogue.standard().type(type), 60)), List.of(), new FarEnd.Open());
        KindAtPlace place = new KindAtPlace(plain, 20, 5);
        double before = 0;
        for (double size : new double[] {0, 0.5, 1}) {
            Event event = place.of(kind, size).orElseThrow(() -> new AssertionError(kind + " has no size"));
            assertEquals(kind, event.kind());
            double change = change(plain, plain.withEvents(List.of(event)));
            assertTrue(change >= before && change > 0, kind + " of size " + size + " changes " + change);
            before = change;
        }
    }

    private static double change(Cable plain, Cable damaged) {
        ComplexArray without = new SimulatedPort(plain, 100).sweep(SWEEP);
        ComplexArray with = new SimulatedPort(damaged, 100).sweep(SWEEP);
        double sum = 0;
        for (int k = 0; k < SWEEP.length; k++) {
            double re = with.re(k) - without.re(k);
            double im = with.im(k) - without.im(k);
            sum += re * re + im * im;
        }
        return Math.sqrt(sum);
    }
}
