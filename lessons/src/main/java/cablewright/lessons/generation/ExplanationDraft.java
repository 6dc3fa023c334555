// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.instrument.Settings;
import java.util.List;
import java.util.Locale;

/**
 * Drafts, in Markdown, what to see on a trace and why, from how each event truly shows. Every number in it is one of the
 * sight's own.
 */
public final class ExplanationDraft {

    private final GenerationTexts texts;

    ExplanationDraft(GenerationTexts texts) {
        this.texts = texts;
    }

    /**
     * Makes a drafter.
     *
     * @param locale the language
     */
    public ExplanationDraft(Locale locale) {
        this(new GenerationTexts(locale));
    }

    /**
     * Drafts an explanation.
     *
     * @param cable the cable
     * @param sights how its events show at the settings that are explained
     * @return the text, one item for each event in order of distance; lengths are marked
     */
    public String of(Cable cable, List<EventVisibility> sights) {
        if (sights.isEmpty()) {
            return texts.say("explanation.sound") + "\n";
        }
        StringBuilder text = new StringBuilder();
        for (EventVisibility sight : sights) {
            Event event = cable.event(sight.eventId()).orElseThrow();
            text.append(item(event, sight, shows(sight) + " " + why(event))).append('\n');
        }
        return text.toString();
    }

    /** Why two times and a length give a place without a velocity. */
    String bothEnds(Cable cable, PlaceVisibility near, PlaceVisibility far) {
        double a = near.thereAndBackSeconds() * 1e9;
        double b = far.thereAndBackSeconds() * 1e9;
        return texts.say(
                        "explanation.bothEnds",
                        GenerationTexts.number(a, 1),
                        GenerationTexts.number(b, 1),
                        GenerationTexts.tenths(cable.lengthMetres()),
                        GenerationTexts.tenths(cable.lengthMetres() * a / (a + b)))
                + "\n";
    }

    /** What the shortest and the longest pulse show of what lies far away. */
    String ladder(
            Settings shortest,
            PlaceVisibility byShortest,
            Settings longest,
            PlaceVisibility byLongest,
            double noiseVolts) {
        return texts.say(
                        "explanation.ladder",
                        nanoseconds(shortest),
                        GenerationTexts.number(100 * byShortest.contrastVolts(), 2),
                        GenerationTexts.number(byShortest.contrastVolts() / noiseVolts, 1),
                        nanoseconds(longest),
                        GenerationTexts.number(100 * byLongest.contrastVolts(), 2),
                        GenerationTexts.number(byLongest.contrastVolts() / noiseVolts, 1),
                        String.valueOf(longest.averages()))
                + "\n";
    }

    private static String nanoseconds(Settings settings) {
        return GenerationTexts.number(settings.stimulus().resolutionSeconds() * 1e9, 0);
    }

    private String item(Event event, EventVisibility sight, String sentences) {
        String kind = texts.kind(event.kind());
        double first = sight.places().get(0).trueMetres();
        if (sight.places().size() == 1) {
            return texts.say("explanation.at", kind, GenerationTexts.tenths(first), sentences);
        }
        double second = sight.places().get(1).trueMetres();
        return texts.say(
                "explanation.stretch",
                kind,
                GenerationTexts.tenths(Math.min(first, second)),
                GenerationTexts.tenths(Math.max(first, second)),
                sentences);
    }

    private String shows(EventVisibility sight) {
        if (sight.visibility() == Visibility.HIDDEN) {
            return texts.say("explanation.hidden");
        }
        String first = edge("explanation.", sight.places().get(0));
        return sight.places().size() == 2
                ? first + " " + edge("explanation.end.", sight.places().get(1))
                : first;
    }

    private String edge(String prefix, PlaceVisibility place) {
        double percent = 100 * Math.abs(place.expectedVolts());
        return texts.say(prefix + (place.expectedVolts() < 0 ? "down" : "up"), GenerationTexts.number(percent, 2));
    }

    private String why(Event event) {
        String nature =
                texts.say(event.kind().nature() == Nature.HARDWARE ? "explanation.hardware" : "explanation.damage");
        if (event instanceof WaterIngress water) {
            return nature + " "
                    + texts.say(
                            "explanation.water",
                            GenerationTexts.tenths(water.entryMetres()),
                            GenerationTexts.number(100 * water.volumeFraction(), 0),
                            texts.say("water." + GenerationTexts.word(water.picture())));
        }
        return nature;
    }
}
