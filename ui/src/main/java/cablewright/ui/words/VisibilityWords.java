// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.answerkey.BestView;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import java.util.Optional;
import java.util.stream.Stream;

/** Describes how events show on a trace, and why some do not. */
public final class VisibilityWords {

    private static final String END_OF = "end of ";

    private final Words words;
    private final Cable cable;

    /**
     * Describes the events of a cable.
     *
     * @param words the words
     * @param cable the cable, which knows the events by their names
     */
    public VisibilityWords(Words words, Cable cable) {
        this.words = words;
        this.cable = cable;
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    /**
     * Says which way the trace first goes.
     *
     * @param height the first lobe, with its sign
     * @return such as "up first"
     */
    public String looks(double height) {
        return say(height < 0 ? "looks.down" : "looks.up");
    }

    /**
     * Explains why an event can't be seen well at the settings that show it best.
     *
     * @param event the event
     * @return a sentence with numbers; empty where it is clear
     */
    public Optional<String> whyNotClear(LineEvent event) {
        BestView best = event.best();
        return best.reason().map(reason -> reason(reason, best.contrastVolts(), best.noiseVolts(), best.otherId()));
    }

    /**
     * Explains why an event can't be seen well at given settings.
     *
     * @param sight how it shows
     * @return a sentence with numbers; empty where it is clear
     */
    public Optional<String> whyNotClear(EventVisibility sight) {
        return whyNotClear(sight, sight.best());
    }

    /**
     * Explains why one place of an event can't be seen well at given settings.
     *
     * @param sight how the event shows
     * @param place the place
     * @return a sentence with numbers; empty where it is clear
     */
    public Optional<String> whyNotClear(EventVisibility sight, PlaceVisibility place) {
        return place.reason().map(reason -> reason(reason, place.contrastVolts(), sight.noiseVolts(), place.otherId()));
    }

    /** Why an event is not clear, with how many times the noise it stands above it. */
    String reason(HiddenReason reason, double contrast, double noise, Optional<String> other) {
        boolean unnamed = reason == HiddenReason.OVERSHADOWED && other.isEmpty();
        double times = noise > 0 ? Math.floor(10 * contrast / noise) / 10 : 0;
        return say(
                "reason." + Words.word(reason) + (unnamed ? ".unnamed" : ""),
                unsigned(contrast),
                unsigned(noise),
                other.map(this::name).orElse(""),
                Quantities.number(times, 1),
                Quantities.significant(VisibilityRules.CLEAR_OVER_NOISE));
    }

    /**
     * Writes a share without a sign.
     *
     * @param share the share
     * @return such as "0.05 %"
     */
    String unsigned(double share) {
        return words.quantities().percent(Math.abs(share)).replace("+", "");
    }

    /**
     * Names an event by its kind and place.
     *
     * @param eventId its name; several joined by +; the end of the line; or "end of" and the name of a branch's joint
     * @return such as "the splice at 31.0 m"
     */
    public String name(String eventId) {
        if (eventId.equals(VisibilityAnalysis.END_OF_LINE)) {
            return say("sight.theEnd");
        }
        if (eventId.startsWith(END_OF)) {
            return say("sight.endOfBranch", branch(eventId.substring(END_OF.length())));
        }
        if (cable.event(eventId).isEmpty() && eventId.contains("+")) {
            return Stream.of(eventId.split("\\+"))
                    .map(this::name)
                    .reduce((first, second) -> say("sight.both", first, second))
                    .orElseThrow();
        }
        Optional<Event> event = cable.event(eventId);
        return event.map(it -> say(
                        "sight.the", words.kind(it.kind()), words.quantities().length(it.startMetres())))
                .orElse(eventId);
    }

    /**
     * Names a branch by the place where it leaves.
     *
     * @param eventId name of the event by which it leaves
     * @return such as "the branch at 31.0 m"
     */
    String branch(String eventId) {
        Optional<Event> event = cable.event(eventId);
        return say(
                "sight.branch",
                event.map(it -> words.quantities().length(it.startMetres())).orElse(eventId));
    }
}
