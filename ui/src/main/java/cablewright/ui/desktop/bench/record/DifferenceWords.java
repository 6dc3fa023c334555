// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.record;

import cablewright.lessons.bench.edit.RecordDifference;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;

/** Describes the differences between drawings and cable. */
final class DifferenceWords {

    private final Texts texts;

    DifferenceWords(Texts texts) {
        this.texts = texts;
    }

    /** One sentence, such as "It lies at 31.4 m: drawn 0.9 m too far." */
    String tell(RecordDifference difference, Cable cable, Words words) {
        Quantities quantities = words.quantities();
        double drawn = difference.drawnMetres().orElse(0);
        double there = difference.trueMetres().orElse(0);
        String off = quantities.length(Math.abs(drawn - there));
        return switch (difference.what()) {
            case PLACE ->
                texts.say(
                        drawn < there ? "difference.place.near" : "difference.place.far",
                        quantities.length(there),
                        off);
            case KIND -> texts.say("difference.kind", words.aKind(kind(difference, cable)));
            case NEVER_BUILT -> texts.say("difference.never-built");
            case NOT_DRAWN ->
                texts.say("difference.not-drawn", words.kind(kind(difference, cable)), quantities.length(there));
            case LENGTH ->
                texts.say(
                        drawn < there ? "difference.length.more" : "difference.length.less",
                        quantities.length(there),
                        off);
            case END -> texts.say("difference.end", words.farEnd(cable.farEnd()));
        };
    }

    private static EventKind kind(RecordDifference difference, Cable cable) {
        return cable.event(difference.subject()).map(Event::kind).orElse(EventKind.CABLE_CHANGE);
    }
}
