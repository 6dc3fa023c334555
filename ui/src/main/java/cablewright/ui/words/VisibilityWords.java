// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.answerkey.BestView;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.feedback.EchoFacts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Signature;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.VisibilityAnalysis;
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
     * Describes how a kind usually looks.
     *
     * @param kind the kind
     * @return such as "down first, then back"
     */
    public String looks(EventKind kind) {
        return looks(kind.signature().firstEdge(), kind.signature().recovery());
    }

    /**
     * Describes how an event looks, by the sign that it has here.
     *
     * @param kind its kind
     * @param height its height on the trace, with its sign
     * @return such as "up first, then back"
     */
    public String looks(EventKind kind, double height) {
        Signature.FirstEdge edge = height < 0 ? Signature.FirstEdge.DOWN : Signature.FirstEdge.UP;
        return looks(edge, kind.signature().recovery());
    }

    private String looks(Signature.FirstEdge edge, Signature.Recovery recovery) {
        return say("looks." + Words.word(edge) + "." + Words.word(recovery));
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

    /**
     * Explains why one place of an event could not be seen well on a trainee's trace.
     *
     * @param fact the facts of the place
     * @return a sentence with numbers; empty where it is clear
     */
    public Optional<String> whyNotClear(EchoFacts fact) {
        return fact.reason().map(reason -> reason(reason, fact.contrastVolts(), fact.noiseVolts(), fact.otherId()));
    }

    private String reason(HiddenReason reason, double contrast, double noise, Optional<String> other) {
        return say(
                "reason." + Words.word(reason),
                unsigned(contrast),
                unsigned(noise),
                other.map(this::name).orElse(""));
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
