// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The plainest explanation of a cable: where its damage lies. It follows the cable until somebody writes a better one. */
final class PlainExplanation {

    private static final int MOST_TOLD = 50;

    private PlainExplanation() {}

    static String of(Cable cable) {
        List<Event> damage = cable.events().stream()
                .filter(event -> event.kind().nature() == Nature.DAMAGE && !isOfTheCable(event.kind()))
                .sorted(Comparator.comparingDouble(Event::startMetres))
                .limit(MOST_TOLD)
                .toList();
        if (damage.isEmpty()) {
            return "Nothing lies along this line but what belongs: it is sound.";
        }
        return damage.stream()
                .map(PlainExplanation::line)
                .collect(Collectors.joining("\n", "What does not belong:\n\n", "\n\nAll else belongs."));
    }

    /** A little unevenness is in every cable, and heat comes and goes. */
    private static boolean isOfTheCable(EventKind kind) {
        return kind == EventKind.UNEVENNESS || kind == EventKind.HEAT;
    }

    private static String line(Event event) {
        String name = event.kind().id().replace('-', ' ');
        return event.endMetres() > event.startMetres()
                ? String.format(
                        Locale.ROOT, "- **%s** from %.1f to %.1f m", name, event.startMetres(), event.endMetres())
                : String.format(Locale.ROOT, "- **%s** at %.1f m", name, event.startMetres());
    }
}
