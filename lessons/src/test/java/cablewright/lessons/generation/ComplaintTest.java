// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What callers say, held to what a technician would expect of each fault (common practice, no source). */
class ComplaintTest {

    private static final int PLANS = 3000;
    private static final List<String> NOTHING_GETS_THROUGH =
            List.of("is out", "no picture", "not even a tone", "without a link", "dead outlet", "busy at all times");

    private static Set<EventKind> kinds(CablePlan plan) {
        return plan.cable().events().stream().map(Event::kind).collect(Collectors.toSet());
    }

    @Test
    void complaintsFollowFromFaults() {
        GenerationTexts texts = new GenerationTexts(Locale.ROOT);
        Set<String> said = new TreeSet<>();
        for (long seed = 0; seed < PLANS; seed++) {
            SeededRandom dice = new SeededRandom(seed, 0);
            CablePlan plan = CablePlan.draw(dice, GenerationRequest.anything(seed, 0.5), texts);
            String brief = new BriefDraft(dice, plan, Contrast.NONE, texts).brief();
            String first = brief.substring(0, brief.indexOf('.'));
            Set<EventKind> kinds = kinds(plan);
            boolean full = kinds.contains(EventKind.OPEN) || kinds.contains(EventKind.SHORT);
            boolean dead = NOTHING_GETS_THROUGH.stream().anyMatch(brief::contains)
                    || brief.contains("as soon as it is switched");
            if (plan.family() != ExerciseFamily.REEL_ACCEPTANCE) {
                assertEquals(full, dead, brief + kinds);
            }
            holds(brief.contains("rain"), kinds.contains(EventKind.WATER), brief + kinds);
            holds(brief.contains("another conversation"), kinds.contains(EventKind.SPLIT), brief + kinds);
            holds(brief.contains("trips as soon"), kinds.contains(EventKind.SHORT), brief + kinds);
            holds(brief.contains("trips now and then"), kinds.contains(EventKind.PARTIAL_SHORT), brief + kinds);
            holds(brief.contains("tone"), kinds.contains(EventKind.OPEN), brief + kinds);
            said.add(plan.family() + first.substring(first.indexOf(' ', 5)));
        }
        assertTrue(said.size() > 25, said::toString);
    }

    private static void holds(boolean complaint, boolean cause, String what) {
        assertFalse(complaint && !cause, what);
    }

    @Test
    void buildingWireEndsInNoTerminator() {
        GenerationTexts texts = new GenerationTexts(Locale.ROOT);
        GenerationRequest request = new GenerationRequest(1, List.of(ExerciseFamily.BUILDING_WIRE), List.of(), 0.5);
        for (long seed = 0; seed < 200; seed++) {
            CablePlan plan = CablePlan.draw(new SeededRandom(seed, 0), request, texts);
            assertEquals(new FarEnd.Open(), plan.cable().farEnd());
        }
    }
}
