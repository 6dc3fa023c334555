// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.feedback.EchoFacts;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.feedback.KindComparison;
import cablewright.lessons.feedback.PlaceReason;
import cablewright.lessons.marking.Finding;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.visibility.Visibility;
import java.util.ArrayList;
import java.util.List;

/**
 * Explains a finding, from the trace that the trainee had before the eyes. Every number and every word for a
 * direction is taken from the facts of this cable.
 */
public final class ReasonWords {

    private final Words words;
    private final VisibilityWords sights;
    private final boolean step;

    /**
     * Writes reasons.
     *
     * @param words the words
     * @param sights explains why events cannot be seen
     * @param step whether the outgoing wave was a step
     */
    public ReasonWords(Words words, VisibilityWords sights, boolean step) {
        this.words = words;
        this.sights = sights;
        this.step = step;
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    private String length(double metres) {
        return words.quantities().length(metres);
    }

    /**
     * Writes the reasons.
     *
     * @param reasons the facts
     * @return sentences, none where the finding is about no event
     */
    public List<String> tell(FindingReasons reasons) {
        List<String> said = new ArrayList<>();
        boolean isEvent = reasons.finding() instanceof Finding.Matched
                || reasons.finding() instanceof Finding.Missed
                || reasons.finding() instanceof Finding.HiddenEvent;
        if (!isEvent) {
            return said;
        }
        if (reasons.echoes().isEmpty()) {
            said.add(say("why.notInRange"));
            return said;
        }
        List<EchoFacts> shown = reasons.echoes().stream()
                .filter(fact -> fact.visibility() != Visibility.HIDDEN)
                .toList();
        shown.forEach(fact -> said.add(shape(fact.echo())));
        if (shown.isEmpty()) {
            hidden(reasons.echoes().get(0), said);
        } else {
            further(reasons, shown.get(0), said);
        }
        return said;
    }

    private void further(FindingReasons reasons, EchoFacts first, List<String> said) {
        reasons.comparison().ifPresent(comparison -> said.add(comparison(comparison)));
        reasons.places().forEach(place -> said.addAll(place(place)));
        boolean missed = reasons.finding() instanceof Finding.Missed;
        if (missed) {
            said.add(seen(first));
            hidden(first, said);
        }
        if (!missed && reasons.comparison().isEmpty() && reasons.places().isEmpty()) {
            said.add(delay(first.echo(), reasons.velocityFraction()));
        }
    }

    private void hidden(EchoFacts fact, List<String> said) {
        sights.whyNotClear(fact).ifPresent(why -> said.add(say("why.atYourSettings", lower(why))));
    }

    private static String lower(String sentence) {
        return sentence.startsWith("It ") ? "it" + sentence.substring(2) : sentence;
    }

    /** How the trace goes at one place. */
    String shape(EventEcho echo) {
        boolean down = echo.firstVolts() < 0;
        String first = sights.unsigned(echo.firstVolts());
        String place = length(echo.shownMetres());
        if (step) {
            String stays = echo.stays() ? "" : "Back";
            return say("why.echo." + (down ? "stepDown" : "stepUp") + stays, place, first);
        }
        if (echo.swingsBack()) {
            return say("why.echo." + (down ? "downUp" : "upDown"), place, first, sights.unsigned(echo.secondVolts()));
        }
        return say("why.echo." + (down ? "down" : "up"), place, first);
    }

    /** When the wave comes back. */
    String delay(EventEcho echo, double velocityFraction) {
        return say(
                "why.delay",
                words.quantities().time(echo.thereAndBackSeconds()),
                Quantities.number(velocityFraction, 3),
                length(echo.shownMetres()));
    }

    private String seen(EchoFacts fact) {
        return say(
                "why.seen",
                words.quantities().percent(fact.seenVolts()),
                words.quantities().percent(fact.withoutNoiseVolts()));
    }

    private String comparison(KindComparison comparison) {
        String left = sights.unsigned(comparison.leftVolts());
        String noise = sights.unsigned(comparison.noiseVolts());
        if (!comparison.canBeTold()) {
            return say("why.sameAs", words.aKind(comparison.flagged()), left, noise);
        }
        double first = comparison.echo().firstVolts();
        return say(
                comparison.otherWay() ? "why.otherWay" : "why.nearestOf",
                RemarkWords.upper(words.aKind(comparison.flagged())),
                say(first < 0 ? "word.down" : "word.up"),
                sights.unsigned(first),
                length(comparison.leftAtMetres()),
                left,
                noise);
    }

    private List<String> place(PlaceReason reason) {
        String fraction = Quantities.number(reason.explainingFraction(), 3);
        boolean possible = reason.explainingFraction() > 0 && reason.explainingFraction() < 1;
        switch (reason.cause()) {
            case VELOCITY:
                return List.of();
            case TOP_NOT_FRONT:
                return List.of(say(
                        "off.top",
                        length(reason.topMetres()),
                        length(reason.place().readMetres())));
            default:
                String key = reason.secondsOff() > 0 ? "off.reading.farther" : "off.reading.nearer";
                String off = say(
                        key,
                        length(Math.abs(
                                reason.place().flaggedMetres() - reason.place().readMetres())),
                        words.quantities().time(Math.abs(reason.secondsOff())));
                return possible ? List.of(off, say("off.velocity", fraction)) : List.of(off);
        }
    }
}
