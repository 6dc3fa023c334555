// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.bench.edit.BenchTexts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Nature;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The plainest explanation of a cable: where its damage lies. It follows the cable until somebody writes a better one. */
final class PlainExplanation {

    private static final int MOST_TOLD = 50;

    private PlainExplanation() {}

    static String of(Cable cable, BenchTexts texts) {
        List<Event> damage = cable.events().stream()
                .filter(event -> event.kind().nature() == Nature.DAMAGE && !isOfTheCable(event.kind()))
                .sorted(Comparator.comparingDouble(Event::startMetres))
                .limit(MOST_TOLD)
                .toList();
        if (damage.isEmpty()) {
            return texts.say("explanation.sound");
        }
        return damage.stream()
                .map(event -> line(event, texts))
                .collect(Collectors.joining(
                        "\n", texts.say("explanation.head") + "\n\n", "\n\n" + texts.say("explanation.tail")));
    }

    /** A little unevenness is in every cable, and heat comes and goes. */
    private static boolean isOfTheCable(EventKind kind) {
        return kind == EventKind.UNEVENNESS || kind == EventKind.HEAT;
    }

    private static String line(Event event, BenchTexts texts) {
        String name = texts.kind(event.kind());
        String start = BenchTexts.length(event.startMetres(), 1);
        return event.endMetres() > event.startMetres()
                ? texts.say("explanation.stretch", name, start, BenchTexts.length(event.endMetres(), 1))
                : texts.say("explanation.at", name, start);
    }
}
