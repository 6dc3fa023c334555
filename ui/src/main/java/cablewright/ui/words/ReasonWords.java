// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.feedback.Claim;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.feedback.KindComparison;
import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import java.util.ArrayList;
import java.util.List;

/** Turns the claims behind a finding into sentences. Every number and every direction is taken from its claim. */
public final class ReasonWords implements Claim.Visitor<List<String>> {

    /** Lateness under this is not mentioned [m]. */
    private static final double LEAST_LATE_METRES = 0.05;

    private final Words words;
    private final VisibilityWords sights;

    /**
     * Makes it.
     *
     * @param words the words
     * @param sights says why events can't be seen
     */
    public ReasonWords(Words words, VisibilityWords sights) {
        this.words = words;
        this.sights = sights;
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    private String length(double metres) {
        return words.quantities().length(metres);
    }

    private String direction(double volts) {
        return say(volts < 0 ? "word.down" : "word.up");
    }

    private String setting(Settings settings, LineEnd end) {
        return say("word.setting", words.stimulus(settings.stimulus()), words.end(end));
    }

    /**
     * Says the claims of a finding.
     *
     * @param reasons the finding and its claims
     * @return sentences, none where it has no claims
     */
    public List<String> tell(FindingReasons reasons) {
        List<String> said = new ArrayList<>();
        reasons.claims().forEach(claim -> said.addAll(claim.accept(this)));
        return said;
    }

    @Override
    public List<String> traceGoes(Claim.TraceGoes claim) {
        String key = claim.secondVolts().isPresent() ? "claim.goes.two" : "claim.goes.one";
        return List.of(say(
                claim.stays() ? "claim.goes.stays" : key,
                length(claim.shownMetres()),
                direction(claim.firstVolts()),
                sights.unsigned(claim.firstVolts()),
                direction(-claim.firstVolts()),
                sights.unsigned(claim.secondVolts().orElse(0)),
                setting(claim.settings(), claim.end())));
    }

    @Override
    public List<String> lineIs(Claim.LineIs claim) {
        return List.of(say("effect." + Words.word(claim.effect())));
    }

    @Override
    public List<String> waveIsBack(Claim.WaveIsBack claim) {
        return List.of(say(
                "why.delay",
                words.quantities().time(claim.seconds()),
                Quantities.number(claim.velocityFraction(), 3),
                length(claim.shownMetres())));
    }

    @Override
    public List<String> traceReads(Claim.TraceReads claim) {
        return List.of(say(
                "why.seen",
                length(claim.metres()),
                words.quantities().percent(claim.seenVolts()),
                words.quantities().percent(claim.withoutNoiseVolts())));
    }

    @Override
    public List<String> notClear(Claim.NotClear claim) {
        String why = sights.reason(claim.reason(), claim.contrastVolts(), claim.noiseVolts(), claim.other());
        return List.of(say("why.atYourSettings", setting(claim.settings(), claim.end()), lower(why)));
    }

    private static String lower(String sentence) {
        return sentence.startsWith("It ") || sentence.startsWith("The ") || sentence.startsWith("What ")
                ? Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1)
                : sentence;
    }

    @Override
    public List<String> beyondRange(Claim.BeyondRange claim) {
        return List.of(say("why.notInRange"));
    }

    @Override
    public List<String> otherWay(Claim.OtherWay claim) {
        return List.of(say(
                "claim.otherWay",
                RemarkWords.upper(words.aKind(claim.kind())),
                direction(claim.firstVolts()),
                direction(-claim.firstVolts())));
    }

    @Override
    public List<String> looksAlike(Claim.LooksAlike claim) {
        return List.of(comparison("claim.looksAlike", claim.comparison(), claim.settings(), claim.end()));
    }

    @Override
    public List<String> stillOff(Claim.StillOff claim) {
        return List.of(comparison("claim.stillOff", claim.comparison(), claim.settings(), claim.end()));
    }

    private String comparison(String key, KindComparison comparison, Settings settings, LineEnd end) {
        return say(
                key,
                RemarkWords.upper(words.aKind(comparison.nearest().kind())),
                sights.unsigned(comparison.nearest().leftVolts()),
                length(comparison.nearest().leftAtMetres()),
                sights.unsigned(comparison.noiseVolts()),
                setting(settings, end));
    }

    @Override
    public List<String> placeShows(Claim.PlaceShows claim) {
        PlaceMark place = claim.place();
        List<String> said = new ArrayList<>();
        said.add(say(
                "claim.place",
                length(place.trueMetres()),
                say(claim.goesUp() ? "word.up" : "word.down"),
                length(place.readMetres()),
                length(Math.max(0, place.fromMetres() - place.toleranceMetres())),
                length(place.toMetres() + place.toleranceMetres()),
                setting(claim.settings(), claim.end())));
        if (Math.abs(place.lateMetres()) >= LEAST_LATE_METRES) {
            said.add(say(place.lateMetres() > 0 ? "claim.late" : "claim.early", length(Math.abs(place.lateMetres()))));
        }
        if (claim.byLoss()) {
            said.add(say("claim.byLoss"));
        }
        return said;
    }

    @Override
    public List<String> atTop(Claim.AtTop claim) {
        return List.of(say("off.top", length(claim.topMetres())));
    }
}
