// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.bench.edit.Copies;
import cablewright.simulator.check.Components;
import cablewright.simulator.check.Components.Stated;
import cablewright.simulator.check.Range;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is stated on the components of records their constructors enforce. */
class StatedLimitsTest {

    private static final int CABLES = 60;

    private final Map<Class<?>, Record> samples = new LinkedHashMap<>();

    @Test
    void everyConstructorRefusesWhatLiesBeyondAStatedLimitAndNamesIt() {
        collectSamples();
        int beyond = 0;
        for (Record sample : samples.values()) {
            for (RecordComponent component : sample.getClass().getRecordComponents()) {
                Stated stated = Components.of(sample.getClass()).named(component.getName());
                for (Object wrong : wrong(component, stated)) {
                    requireRefused(sample, component, wrong);
                    beyond++;
                }
            }
        }
        int tried = beyond;
        assertTrue(samples.size() > 50, () -> "only " + samples.size() + " records were found");
        assertTrue(tried > 250, () -> "only " + tried + " values were tried");
    }

    private static void requireRefused(Record sample, RecordComponent component, Object wrong) {
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> Copies.with(sample, component.getName(), wrong),
                        () -> component + " took " + wrong)
                .getMessage();
        assertTrue(message.startsWith(component.getName() + " is "), message);
    }

    private static List<Object> wrong(RecordComponent component, Stated stated) {
        Class<?> type = component.getType();
        List<Object> all = new ArrayList<>();
        if (type == String.class) {
            all.add("an escape \u001b[31m");
            if (stated.lines().isEmpty()) {
                all.add("two\nlines");
            }
        }
        stated.range().ifPresent(range -> {
            for (double value : beyond(range)) {
                if (type == double.class) {
                    all.add(value);
                } else if (type == OptionalDouble.class) {
                    all.add(OptionalDouble.of(value));
                } else if (type == int.class && Math.rint(value) == value && Math.abs(value) < Integer.MAX_VALUE) {
                    all.add((int) value);
                }
            }
        });
        return all;
    }

    private static List<Double> beyond(Range range) {
        List<Double> values = new ArrayList<>(List.of(Double.NaN, Double.POSITIVE_INFINITY));
        if (range.hasLeast()) {
            values.add(range.leastIsAllowed() ? Math.nextDown(range.least()) : range.least());
            values.add(Math.floor(range.least()) - 1);
        }
        if (range.hasMost()) {
            values.add(range.mostIsAllowed() ? Math.nextUp(range.most()) : range.most());
            values.add(Math.ceil(range.most()) + 1);
        }
        return values;
    }

    private void collectSamples() {
        for (int seed = 0; seed < CABLES; seed++) {
            collect(new AnyCable(new SplittableRandom(seed)).draw());
        }
        collect(SampleExercises.with());
        AnyPages.draw(1).forEach(this::collect);
    }

    private void collect(Object value) {
        if (value instanceof Optional<?> held) {
            held.ifPresent(this::collect);
        } else if (value instanceof List<?> list) {
            list.forEach(this::collect);
        } else if (value instanceof Record held && held.getClass().getName().startsWith("cablewright.")) {
            samples.putIfAbsent(held.getClass(), held);
            for (RecordComponent component : held.getClass().getRecordComponents()) {
                collect(Copies.get(held, component.getName()));
            }
        }
    }
}
