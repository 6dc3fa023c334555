// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.FindingVisitor;
import cablewright.lessons.marking.PlaceMark;

/** Writes the remarks under a flag's finding, each as one or two sentences. */
final class RemarkWords implements FindingVisitor<String> {

    private final Words words;
    private final VisibilityWords sights;

    RemarkWords(Words words, VisibilityWords sights) {
        this.words = words;
        this.sights = sights;
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    private String length(double metres) {
        return words.quantities().length(metres);
    }

    @Override
    public String wrongPlace(Finding.WrongPlace finding) {
        PlaceMark place = finding.place();
        return say(
                place.flaggedMetres() > place.toMetres() ? "remark.tooFar" : "remark.tooNear",
                length(place.flaggedMetres()),
                length(place.errorMetres()),
                length(place.toleranceMetres()));
    }

    @Override
    public String wrongPlaceByVelocity(Finding.WrongPlaceByVelocity finding) {
        String key = finding.stated() ? "remark.byStatedVelocity" : "remark.byVelocity";
        double dig = finding.place().digErrorMetres();
        return say(
                key,
                Quantities.number(finding.setFraction(), 3),
                length(finding.place().flaggedMetres()),
                Quantities.number(finding.rightFraction(), 3),
                length(finding.place().trueMetres()),
                length(Math.abs(dig)),
                say(dig > 0 ? "word.beyond" : "word.before"));
    }

    @Override
    public String wrongKind(Finding.WrongKind finding) {
        return say("remark.wrongKindBare", words.aKind(finding.truth()), words.aKind(finding.flagged()));
    }

    static String upper(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    @Override
    public String needlessDig(Finding.NeedlessDig finding) {
        double cost = Math.abs(finding.marks());
        return finding.belonging()
                .map(LineEvent::kind)
                .map(kind -> say("remark.digOverBelonging", words.aKind(kind), cost))
                .orElseGet(() -> say("remark.digOverNothing", cost));
    }

    @Override
    public String damageLeft(Finding.DamageLeft finding) {
        return say("remark.damageLeft", words.aKind(finding.event().kind()));
    }

    @Override
    public String marginalFound(Finding.MarginalFound finding) {
        return say("remark.marginalFound", sights.whyNotClear(finding.event()).orElse(""));
    }

    private static String notARemark(Finding finding) {
        throw new IllegalArgumentException(
                "\"" + finding + "\" stands by itself and is no remark under another finding");
    }

    @Override
    public String matched(Finding.Matched finding) {
        return notARemark(finding);
    }

    @Override
    public String repeated(Finding.Repeated finding) {
        return notARemark(finding);
    }

    @Override
    public String beside(Finding.Beside finding) {
        return notARemark(finding);
    }

    @Override
    public String branchFlagged(Finding.BranchFlagged finding) {
        return notARemark(finding);
    }

    @Override
    public String ghostTakenForEvent(Finding.GhostTakenForEvent finding) {
        return notARemark(finding);
    }

    @Override
    public String nothingThere(Finding.NothingThere finding) {
        return notARemark(finding);
    }

    @Override
    public String endFlagged(Finding.EndFlagged finding) {
        return notARemark(finding);
    }

    @Override
    public String jointFlagged(Finding.JointFlagged finding) {
        return notARemark(finding);
    }

    @Override
    public String missed(Finding.Missed finding) {
        return notARemark(finding);
    }

    @Override
    public String hiddenEvent(Finding.HiddenEvent finding) {
        return say("remark.hiddenFound", sights.whyNotClear(finding.event()).orElse(""));
    }

    @Override
    public String predictionResult(Finding.PredictionResult finding) {
        return notARemark(finding);
    }
}
