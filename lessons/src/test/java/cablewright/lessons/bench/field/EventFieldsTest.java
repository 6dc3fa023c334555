// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.line.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a field says it allows is what the event's own constructor allows, for everything that can be put on a cable. */
class EventFieldsTest {

    static Stream<Arguments> everything() {
        List<Arguments> all = new ArrayList<>();
        for (String type : List.of("drop-6-foam", "pair-24")) {
            Cable cable = plain(type);
            for (Insertable one : Insertable.on(cable.runs().get(0).type())) {
                all.add(Arguments.of(one, cable));
            }
        }
        return all.stream();
    }

    private static Cable plain(String type) {
        return new Cable("plain", List.of(new Run(Catalogue.standard().type(type), 200)), List.of(), new FarEnd.Open());
    }

    private static Event put(Insertable one, Cable cable) {
        return one.putOn(cable, 60, 1).events().get(0);
    }

    @ParameterizedTest
    @MethodSource("everything")
    void aFieldAllowsWhatTheEventAllowsAndNoMore(Insertable one, Cable cable) {
        Event event = put(one, cable);
        int numbers = 0;
        for (EventField field : EventFields.of(cable, event)) {
            if (field instanceof NumberField number) {
                numbers++;
                double least = number.allowed().least();
                double most = number.allowed().most();
                assertMakes(number, number.allowed().leastIsAllowed() ? least : least + 1e-6 * (most - least));
                assertMakes(number, most);
                assertTrue(number.faultOf(Math.nextUp(most)).isPresent());
                assertTrue(number.faultOf(Double.NaN).isPresent());
                if (!field.key().matches("startMetres|positionMetres|lengthMetres|entryMetres|branchMetres")) {
                    assertThrows(IllegalArgumentException.class, () -> number.with(most * 1.001 + 1e-9), field.key());
                }
            }
        }
        assertTrue(numbers > 0, "no number of " + event);
    }

    private static void assertMakes(NumberField field, double value) {
        assertTrue(field.faultOf(value).isEmpty(), field.key() + " " + value);
        try {
            field.with(value);
        } catch (IllegalArgumentException e) {
            // Only what another value forbids may be refused, as the loss of one leg bounds that of the other.
            assertTrue(e.getMessage().contains("together"), field.key() + ": " + e.getMessage());
        }
    }

    @ParameterizedTest
    @MethodSource("everything")
    void aSliderRunsOnlyOverWhatIsAllowedAndGivesBackItsPlace(Insertable one, Cable cable) {
        Event event = put(one, cable);
        int numbers = 0;
        for (EventField field : EventFields.of(cable, event)) {
            if (field instanceof NumberField number) {
                numbers++;
                for (double place : new double[] {0, 0.3, 1}) {
                    double value = number.slider().at(place);
                    assertTrue(number.faultOf(value).isEmpty(), field.key() + " " + value);
                    assertEquals(place, number.slider().placeOf(value), 1e-9, field.key());
                }
            }
        }
        assertTrue(numbers > 0, "no number of " + event);
    }

    @ParameterizedTest
    @MethodSource("everything")
    void changingAFieldChangesThatFieldAlone(Insertable one, Cable cable) {
        Event event = put(one, cable);
        int numbers = 0;
        for (EventField field : EventFields.of(cable, event)) {
            if (field instanceof NumberField number && number.value().isPresent()) {
                numbers++;
                assertEquals(event, number.with(number.value().getAsDouble()), field.key());
                // High on the slider, where no pair of losses gives the legs of a splitter too much.
                double other = number.slider().at(0.91);
                Event changed = number.with(other);
                assertEquals(other, sameField(cable, changed, field).value().getAsDouble(), 1e-12 * other, field.key());
            }
        }
        assertTrue(numbers > 0, "no number of " + event);
    }

    private static NumberField sameField(Cable cable, Event event, EventField field) {
        return (NumberField) EventFields.of(cable, event).stream()
                .filter(it -> it.key().equals(field.key()))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("everything")
    void everyChoiceOfEveryFieldCanBeMade(Insertable one, Cable cable) {
        Event event = put(one, cable);
        for (EventField field : EventFields.of(cable, event)) {
            if (field instanceof ChoiceField choice) {
                assertTrue(choice.choices().contains(choice.chosen()), field.key());
                for (String word : choice.choices()) {
                    CableEdits.added(cable, choice.with(word));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everything")
    void anythingCanBeMovedFromEndToEndOfItsCable(Insertable one, Cable cable) {
        Cable with = one.putOn(cable, 60, 1);
        String id = with.events().get(0).id();
        for (double metres : new double[] {-50, 0, 33.3, 200, 1e6}) {
            Event moved = CableEdits.moved(with, id, metres).event(id).orElseThrow();
            assertTrue(moved.startMetres() >= 0 && moved.endMetres() <= 200 + 1e-9, moved.toString());
            if (moved instanceof WaterIngress wet) {
                WaterIngress before = (WaterIngress) with.events().get(0);
                assertEquals(before.entryMetres() - before.startMetres(), wet.entryMetres() - wet.startMetres(), 1e-9);
            }
        }
    }
}
