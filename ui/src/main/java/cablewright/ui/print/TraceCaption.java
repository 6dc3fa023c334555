// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;

/** Describes how a trace was taken. */
final class TraceCaption {

    private TraceCaption() {}

    static String of(Trace trace, LineEnd end, Texts texts, Words words) {
        Settings settings = trace.settings();
        return texts.say(
                "trace.caption",
                words.end(end),
                words.stimulus(settings.stimulus()),
                Quantities.number(settings.velocityFraction(), 3),
                Quantities.significant(settings.gainDecibels()),
                String.valueOf(settings.averages()),
                words.quantities().shortLength(settings.rangeMetres()));
    }
}
