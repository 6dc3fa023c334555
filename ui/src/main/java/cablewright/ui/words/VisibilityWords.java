// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.answerkey.BestView;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.paths.Reflector;
import java.util.List;
import java.util.Optional;

/** Describes how events show on a trace, and why some do not. */
public final class VisibilityWords {

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
        return best.reason().map(reason -> reason(reason, best.contrastVolts(), best.noiseVolts(), best.other()));
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
        return place.reason().map(reason -> reason(reason, place.contrastVolts(), sight.noiseVolts(), place.other()));
    }

    /** Why an event is not clear, with how many times the noise it stands above it. */
    String reason(HiddenReason reason, double contrast, double noise, Optional<Reflector> other) {
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
     * Names what sent part of a wave back, by its kind and place.
     *
     * @param reflector what it is
     * @return such as "the splice at 31.0 m"
     */
    public String name(Reflector reflector) {
        return reflector.accept(new Names());
    }

    /** Names reflectors of the cable. */
    private final class Names implements Reflector.Visitor<String> {
        @Override
        public String port() {
            return say("sight.port");
        }

        @Override
        public String cableChange() {
            return say("sight.cableChange");
        }

        @Override
        public String endOfLine() {
            return say("sight.theEnd");
        }

        @Override
        public String endOfBranch(String jointId) {
            return say("sight.endOfBranch", branch(jointId));
        }

        @Override
        public String events(List<String> ids) {
            return ids.stream()
                    .map(this::event)
                    .reduce((first, second) -> say("sight.both", first, second))
                    .orElseThrow();
        }

        private String event(String id) {
            return cable.event(id)
                    .map(it -> say(
                            "sight.the",
                            words.kind(it.kind()),
                            words.quantities().length(it.startMetres())))
                    .orElse(id);
        }
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
