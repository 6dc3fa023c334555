// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cablewright.simulator.exchange.touchstone.FrequencyUnit;
import cablewright.simulator.exchange.touchstone.TouchstoneFormatException;
import cablewright.simulator.exchange.touchstone.TouchstoneReader;
import cablewright.simulator.exchange.touchstone.TouchstoneWriter;
import cablewright.simulator.exchange.touchstone.TouchstoneWriter.Version;
import cablewright.simulator.exchange.touchstone.ValueFormat;
import cablewright.simulator.kernel.ComplexArray;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TouchstoneProperties {

    private static ScatteringSweep random(int ports, long seed) {
        Random random = new Random(seed);
        double[] hertz = new double[20];
        double f = random.nextBoolean() ? 0 : random.nextDouble() * 1e6;
        for (int k = 0; k < hertz.length; k++) {
            hertz[k] = f;
            f += Math.exp(20 * random.nextDouble()) * 1e-3;
        }
        List<ComplexArray> parameters = new ArrayList<>();
        for (int i = 0; i < ports * ports; i++) {
            double[] re = new double[hertz.length];
            double[] im = new double[hertz.length];
            for (int k = 0; k < hertz.length; k++) {
                re[k] = random.nextGaussian() * Math.pow(10, -random.nextInt(12));
                im[k] = random.nextGaussian() * Math.pow(10, -random.nextInt(12));
            }
            parameters.add(ComplexArray.takingOver(re, im));
        }
        return ports == 1
                ? ScatteringSweep.onePort(hertz, 75, parameters.get(0))
                : ScatteringSweep.twoPort(hertz, 50, 1 + 200 * random.nextDouble(), parameters);
    }

    private static ScatteringSweep thereAndBack(ScatteringSweep sweep, TouchstoneWriter writer) throws IOException {
        StringBuilder text = new StringBuilder();
        writer.write(sweep, List.of("invented\nnumbers"), text);
        return TouchstoneReader.readText("x.s" + sweep.ports().size() + "p", text.toString());
    }

    @Property(tries = 100)
    void realAndImaginaryPartsInHertzComeBackBitForBit(
            @ForAll @IntRange(min = 1, max = 2) int ports, @ForAll long seed, @ForAll Version version)
            throws IOException {
        ScatteringSweep sweep = random(ports, seed);
        ScatteringSweep back = thereAndBack(sweep, new TouchstoneWriter(version, FrequencyUnit.HZ, ValueFormat.RI));
        assertEquals(sweep.ports(), back.ports());
        for (int k = 0; k < sweep.count(); k++) {
            assertEquals(sweep.hertz(k), back.hertz(k));
            for (int i = 0; i < ports * ports; i++) {
                assertEquals(at(sweep, i).re(k), at(back, i).re(k));
                assertEquals(at(sweep, i).im(k), at(back, i).im(k));
            }
        }
    }

    @Property(tries = 100)
    void otherUnitsAndFormatsComeBackToTheLastDigits(
            @ForAll @IntRange(min = 1, max = 2) int ports,
            @ForAll long seed,
            @ForAll Version version,
            @ForAll FrequencyUnit unit,
            @ForAll ValueFormat format)
            throws IOException {
        ScatteringSweep sweep = random(ports, seed);
        ScatteringSweep back = thereAndBack(sweep, new TouchstoneWriter(version, unit, format));
        for (int k = 0; k < sweep.count(); k++) {
            assertEquals(sweep.hertz(k), back.hertz(k), 1e-15 * sweep.hertz(k));
            for (int i = 0; i < ports * ports; i++) {
                double size = at(sweep, i).magnitude(k);
                assertEquals(at(sweep, i).re(k), at(back, i).re(k), 1e-14 * size);
                assertEquals(at(sweep, i).im(k), at(back, i).im(k), 1e-14 * size);
            }
        }
    }

    private static ComplexArray at(ScatteringSweep sweep, int i) {
        int ports = sweep.ports().size();
        return sweep.parameter(1 + i / ports, 1 + i % ports);
    }

    @Provide
    Arbitrary<String> nonsense() {
        Arbitrary<String> word = Arbitraries.of(
                "#",
                "[Version] 2.0",
                "[Number of Ports]",
                "1",
                "2",
                "[Network Data]",
                "[End]",
                "R",
                "GHz",
                "S",
                "RI",
                "\n",
                "\n",
                "\r\n",
                "!",
                "[",
                "]",
                "0.5",
                "-1e5",
                "1e400",
                "[Reference]",
                "[Matrix Format] Lower",
                "\u0000",
                "é",
                "[Mixed-Mode Order] D1,2",
                "[Number of Frequencies] 1",
                "[Two-Port Data Order] 12_21",
                "Z",
                "H");
        return word.list().ofMaxSize(40).map(words -> String.join(" ", words));
    }

    /** Whatever stands in a file, it is read or refused by name and line; nothing else happens. */
    @Property(tries = 2000)
    void nonsenseIsRefusedInWords(@ForAll("nonsense") String text, @ForAll @IntRange(min = 0, max = 3) int ports) {
        try {
            TouchstoneReader.readText(ports == 0 ? "x.dat" : "x.s" + ports + "p", text);
        } catch (TouchstoneFormatException e) {
            assertEquals(1, e.getMessage().lines().count());
        }
    }

    @Test
    void modesOfAPairAreNotWritten() throws IOException {
        ScatteringSweep pair = TouchstoneReader.readText(
                "x.ts",
                "[Version] 2.0\n# Hz S RI R 50\n[Number of Ports] 2\n[Two-Port Data Order] 12_21\n"
                        + "[Number of Frequencies] 1\n[Mixed-Mode Order] C1,2 D1,2\n[Network Data]\n"
                        + "1 0 0 0 0 0 0 0 0\n[End]\n");
        assertThrows(IllegalArgumentException.class, () -> TouchstoneWriter.exact()
                .write(pair, List.of(), new StringBuilder()));
    }
}
