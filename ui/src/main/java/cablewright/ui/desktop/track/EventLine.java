// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.EventWords;
import cablewright.ui.words.VisibilityWords;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** One line about the event at the cursor: what it is, how large, and how it shows or why it does not. */
final class EventLine {

    private final Supplier<Cable> cable;
    private final Texts texts;

    EventLine(Supplier<Cable> cable, Texts texts) {
        this.cable = cable;
        this.texts = texts;
    }

    /**
     * Finds what lies at the cursor.
     *
     * @param cursorMetres position of the cursor [m]
     * @param reachMetres how near a thing must be [m]
     */
    Optional<CableDrawing.Mark> at(CableDrawing drawing, double cursorMetres, double reachMetres) {
        return drawing.marks().stream()
                .filter(mark -> distance(mark, cursorMetres) <= reachMetres)
                .min((a, b) -> Double.compare(distance(a, cursorMetres), distance(b, cursorMetres)));
    }

    private static double distance(CableDrawing.Mark mark, double metres) {
        return Math.max(0, Math.max(mark.shownFromMetres() - metres, metres - mark.shownToMetres()));
    }

    String tell(CableDrawing.Mark mark, List<EventVisibility> sights, Words words) {
        String what = words.kind(mark.event().kind());
        String detail = new EventWords(words).detail(mark.event());
        Optional<EventVisibility> sight = sights.stream()
                .filter(it -> it.eventId().equals(mark.event().id()))
                .findFirst();
        String shows = sight.map(it -> shows(it, words)).orElse("");
        return texts.say("cable.line", what, detail, shows);
    }

    private String shows(EventVisibility sight, Words words) {
        VisibilityWords sights = new VisibilityWords(words, cable.get());
        String height = words.quantities().percent(sight.best().expectedVolts());
        String sendsBack =
                texts.say("cable.sendsBack", height, sights.looks(sight.best().expectedVolts()));
        return sights.whyNotClear(sight).orElse(sendsBack);
    }
}
