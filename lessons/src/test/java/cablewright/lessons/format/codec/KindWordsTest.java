// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.hardware.InlineComponent;
import cablewright.simulator.crosssection.FittedSection;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class KindWordsTest {

    @Test
    void everyRecordOfASealedFamilyHasItsWord() {
        for (Map.Entry<Class<?>, List<Variant>> family : KindWords.families().entrySet()) {
            Set<Class<?>> told =
                    family.getValue().stream().map(KindWordsTest::valueType).collect(Collectors.toSet());
            assertEquals(
                    records(family.getKey()).collect(Collectors.toSet()),
                    told,
                    family.getKey().getName());
        }
    }

    /** A data sheet is told in place of the section that is fitted to it. */
    private static Class<?> valueType(Variant variant) {
        return variant.word().equals("data-sheet") ? FittedSection.class : variant.type();
    }

    private static Stream<Class<?>> records(Class<?> type) {
        if (type == Event.class) {
            return Stream.of(InlineComponent.class, LineCondition.class).flatMap(KindWordsTest::records);
        }
        return type.isSealed()
                ? Arrays.stream(type.getPermittedSubclasses()).flatMap(KindWordsTest::records)
                : Stream.of(type);
    }

    @Test
    void noWordIsUsedTwiceAndEventsGoByTheWordOfTheirKind() {
        for (List<Variant> variants : KindWords.families().values()) {
            assertEquals(
                    variants.size(),
                    new HashSet<>(variants.stream().map(Variant::word).toList()).size());
        }
        Set<String> kinds = Arrays.stream(EventKind.values()).map(EventKind::id).collect(Collectors.toSet());
        Set<String> words = KindWords.families().get(Event.class).stream()
                .map(Variant::word)
                .collect(Collectors.toSet());
        words.removeAll(kinds);
        assertEquals(Set.of("series-element", "shunt-element", "kink"), words);
    }
}
