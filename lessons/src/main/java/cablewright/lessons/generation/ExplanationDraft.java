// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import java.util.List;
import java.util.Locale;

/**
 * Drafts, in Markdown, what to see on a trace and why, from how each event truly shows. Every number in it is one of the
 * sight's own.
 */
public final class ExplanationDraft {

    private ExplanationDraft() {}

    /**
     * Drafts an explanation.
     *
     * @param cable the cable
     * @param sights how its events show at the settings that are explained
     * @return the text, one item for each event in the order of distance
     */
    public static String of(Cable cable, List<EventVisibility> sights) {
        if (sights.isEmpty()) {
            return "Nothing lies along this line but the cable itself: it is sound.\n";
        }
        StringBuilder text = new StringBuilder();
        for (EventVisibility sight : sights) {
            Event event = cable.event(sight.eventId()).orElseThrow();
            text.append("- **")
                    .append(name(event))
                    .append("** ")
                    .append(places(sight))
                    .append(". ");
            text.append(shows(sight)).append(' ').append(why(event)).append('\n');
        }
        return text.toString();
    }

    private static String name(Event event) {
        return event.kind().id().replace('-', ' ');
    }

    private static String places(EventVisibility sight) {
        PlaceVisibility first = sight.places().get(0);
        if (sight.places().size() == 1) {
            return String.format(Locale.ROOT, "at %.1f m", first.trueMetres());
        }
        double a = first.trueMetres();
        double b = sight.places().get(1).trueMetres();
        return String.format(Locale.ROOT, "from %.1f to %.1f m", Math.min(a, b), Math.max(a, b));
    }

    private static String shows(EventVisibility sight) {
        if (sight.visibility() == Visibility.HIDDEN) {
            return "The trace does not show it from here.";
        }
        PlaceVisibility first = sight.places().get(0);
        String direction = first.expectedVolts() < 0 ? "down" : "up";
        String text = String.format(
                Locale.ROOT,
                "The trace goes %s first, by %.2f %% of the outgoing wave.",
                direction,
                100 * Math.abs(first.expectedVolts()));
        if (sight.places().size() == 2) {
            PlaceVisibility second = sight.places().get(1);
            text += String.format(
                    Locale.ROOT,
                    " Where it ends the trace goes %s by %.2f %%.",
                    second.expectedVolts() < 0 ? "down" : "up",
                    100 * Math.abs(second.expectedVolts()));
        }
        return text;
    }

    private static String why(Event event) {
        String nature = event.kind().nature() == Nature.HARDWARE ? "It is hardware of the trade." : "It is damage.";
        if (event instanceof WaterIngress water) {
            return nature
                    + String.format(
                            Locale.ROOT,
                            " The water came in at %.1f m and lies as %s, %.0f %% of the dielectric.",
                            water.entryMetres(),
                            water.picture().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                            100 * water.volumeFraction());
        }
        return nature;
    }
}
