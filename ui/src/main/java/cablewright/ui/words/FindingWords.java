// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.answerkey.BestView;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.FindingVisitor;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.MarkingRules;
import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.Nature;
import cablewright.ui.words.FindingText.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Turns the findings of marking into sentences. Each sentence takes its numbers from its finding. */
public final class FindingWords implements FindingVisitor<FindingText> {

    /** What the path of a ghost calls the instrument. */
    /** An error under this is written as none. */
    private static final double EXACT_METRES = 0.05;

    private final Words words;
    private final Exercise exercise;
    private final VisibilityWords sights;
    private final RemarkWords remarks;
    private final Map<Finding, List<String>> reasons;

    /**
     * Describes the findings of one exercise in general words.
     *
     * @param words the words
     * @param exercise the exercise
     */
    public FindingWords(Words words, Exercise exercise) {
        this(words, exercise, List.of());
    }

    /**
     * Describes the findings of one exercise with their reasons, where they are known.
     *
     * @param words the words
     * @param exercise the exercise
     * @param reasons the reasons of findings
     */
    public FindingWords(Words words, Exercise exercise, List<FindingReasons> reasons) {
        this.words = words;
        this.exercise = exercise;
        this.sights = new VisibilityWords(words, exercise.cable());
        ReasonWords written = new ReasonWords(words, sights);
        this.reasons = reasons.stream()
                .collect(Collectors.toMap(FindingReasons::finding, written::tell, (first, second) -> first));
        this.remarks = new RemarkWords(words, sights);
    }

    /**
     * Describes all findings of a sheet.
     *
     * @param sheet the sheet
     * @return the findings in its order
     */
    public List<FindingText> tell(MarkSheet sheet) {
        return sheet.findings().stream().map(finding -> finding.accept(this)).toList();
    }

    /**
     * Writes marks.
     *
     * @param marks the marks
     * @return without needless digits: "34", "3.5"
     */
    public static String marks(double marks) {
        return Quantities.significant(Math.rint(marks * 10) / 10);
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    private String outOf(double marks, LineEvent event) {
        boolean worthNothing = event.standing() == Requirement.HIDDEN;
        return worthNothing
                ? ""
                : say("marks.of", marks(marks), marks(event.marks().total()));
    }

    private String title(Flag flag) {
        String place = flag.endMetres().isPresent()
                ? words.quantities()
                        .stretch(flag.startMetres(), flag.endMetres().getAsDouble())
                : words.quantities().length(flag.startMetres());
        return say("title.flag", place, words.kind(flag.kind()));
    }

    private String title(LineEvent event) {
        boolean stretch = event.trueEndMetres() - event.trueStartMetres() >= 0.1;
        String place = stretch
                ? words.quantities().stretch(event.trueStartMetres(), event.trueEndMetres())
                : words.quantities().length(event.trueStartMetres());
        return say("title.flag", place, words.kind(event.kind()));
    }

    private static String joined(List<String> sentences) {
        return sentences.stream().filter(one -> !one.isEmpty()).collect(Collectors.joining(" "));
    }

    @Override
    public FindingText matched(Finding.Matched finding) {
        List<String> why = new ArrayList<>();
        boolean kindIsRight = finding.children().stream().noneMatch(Finding.WrongKind.class::isInstance);
        remarks(finding, child -> child instanceof Finding.WrongKind, why);
        finding.places().stream().filter(place -> !isTold(place, finding)).forEach(place -> why.add(place(place)));
        why.add(record(finding.event()));
        List<String> written = reasons.getOrDefault(finding, List.of());
        if (kindIsRight && written.isEmpty()) {
            why.add(best("why.atBest", finding.event()));
        }
        why.addAll(written);
        remarks(finding, child -> !(child instanceof Finding.WrongKind), why);
        return new FindingText(
                Optional.of(finding.flag().letter()),
                outcome(finding),
                title(finding.flag()),
                outOf(finding.marks(), finding.event()),
                joined(why));
    }

    private void remarks(Finding.Matched finding, Predicate<Finding> which, List<String> why) {
        finding.children().stream().filter(which).forEach(child -> why.add(child.accept(remarks)));
    }

    private static Outcome outcome(Finding.Matched finding) {
        boolean dig = finding.children().stream().anyMatch(child -> child instanceof Finding.NeedlessDig);
        if (finding.event().standing() == Requirement.HIDDEN) {
            return dig ? Outcome.WRONG : Outcome.TOLD;
        }
        if (finding.marks() >= finding.event().marks().total() - 1e-9 && !dig) {
            return Outcome.RIGHT;
        }
        return finding.marks() > 0 && !dig ? Outcome.PARTLY : Outcome.WRONG;
    }

    /** A remark on a place says all about it. */
    private static boolean isTold(PlaceMark place, Finding.Matched finding) {
        return finding.children().stream()
                .anyMatch(child ->
                        child instanceof Finding.WrongPlace wp && wp.place().equals(place)
                                || child instanceof Finding.WrongPlaceByVelocity wpbv
                                        && wpbv.place().equals(place));
    }

    private String place(PlaceMark place) {
        String key = "place." + Words.word(place.edge());
        return place.errorMetres() < EXACT_METRES
                ? say(key + ".exact")
                : say(key, words.quantities().length(place.errorMetres()));
    }

    private String record(LineEvent event) {
        String ruled = event.ruling()
                .flatMap(EventRuling::verdict)
                .map(verdict -> say("why.ruled", words.verdict(verdict)))
                .orElse("");
        if (event.kind().nature() != Nature.HARDWARE) {
            return ruled;
        }
        return joined(List.of(
                say(event.eventId().filter(exercise.record()::shows).isPresent() ? "why.inRecord" : "why.notInRecord"),
                ruled));
    }

    /** How an event shows where it shows best, with the setting. */
    private String best(String key, LineEvent event) {
        BestView best = event.best();
        return say(
                key,
                sights.unsigned(best.contrastVolts()),
                words.stimulus(best.settings().stimulus()),
                words.end(best.end()));
    }

    private FindingText aboutFlag(Flag flag, List<Finding> children, String why) {
        return aboutFlag(flag, children, 0, why);
    }

    private FindingText aboutFlag(Flag flag, List<Finding> children, double own, String why) {
        boolean dig = children.stream().anyMatch(child -> child instanceof Finding.NeedlessDig);
        List<String> all = new ArrayList<>(List.of(why));
        if (own < 0) {
            all.add(say("why.strayCost", Math.abs(own)));
        }
        children.forEach(child -> all.add(child.accept(remarks)));
        double cost = own + children.stream().mapToDouble(Finding::marks).sum();
        return new FindingText(
                Optional.of(flag.letter()),
                dig || own < 0 ? Outcome.WRONG : Outcome.TOLD,
                title(flag),
                cost == 0 ? "" : marks(cost),
                joined(all));
    }

    @Override
    public FindingText repeated(Finding.Repeated finding) {
        return aboutFlag(
                finding.flag(),
                finding.children(),
                say("why.repeated", sights.name(finding.event().reflector())));
    }

    @Override
    public FindingText ghostTakenForEvent(Finding.GhostTakenForEvent finding) {
        String path = finding.path().stream().map(sights::name).collect(Collectors.joining(", "));
        String shown = words.quantities().length(finding.shownMetres());
        String height = sights.unsigned(finding.heightVolts());
        String direction = say(finding.heightVolts() < 0 ? "word.down" : "word.up");
        return aboutFlag(
                finding.flag(), finding.children(), finding.marks(), say("why.ghost", path, shown, direction, height));
    }

    @Override
    public FindingText nothingThere(Finding.NothingThere finding) {
        return aboutFlag(finding.flag(), finding.children(), finding.marks(), say("why.nothing"));
    }

    @Override
    public FindingText beside(Finding.Beside finding) {
        String key = finding.event().standing() == Requirement.HIDDEN
                ? "why.beside.hidden"
                : finding.taken() ? "why.beside.taken" : "why.beside.tooFar";
        return aboutFlag(
                finding.flag(),
                finding.children(),
                finding.marks(),
                say(key, sights.name(finding.event().reflector())));
    }

    @Override
    public FindingText branchFlagged(Finding.BranchFlagged finding) {
        return aboutFlag(
                finding.flag(),
                finding.children(),
                say(
                        "why.branchEnd",
                        sights.branch(finding.tapId()),
                        words.quantities().length(finding.alongMetres()),
                        words.quantities().length(finding.shownMetres())));
    }

    @Override
    public FindingText endFlagged(Finding.EndFlagged finding) {
        return aboutFlag(
                finding.flag(),
                List.of(),
                say("why.endFlagged", words.quantities().length(finding.shownMetres())));
    }

    @Override
    public FindingText jointFlagged(Finding.JointFlagged finding) {
        return aboutFlag(
                finding.flag(),
                finding.children(),
                say("why.jointFlagged", words.quantities().length(finding.shownMetres())));
    }

    @Override
    public FindingText missed(Finding.Missed finding) {
        LineEvent event = finding.event();
        boolean lost = event.standing() == Requirement.DEMANDED;
        List<String> written = reasons.getOrDefault(finding, List.of());
        String seen = joined(List.of(joined(written), best("why.atBest", event)));
        return new FindingText(
                Optional.empty(),
                lost ? Outcome.WRONG : Outcome.TOLD,
                title(event),
                lost ? outOf(0, event) : "",
                joined(List.of(
                        say(lost ? "why.missed" : "why.missedMarginal"),
                        seen,
                        sights.whyNotClear(event).orElse(""))));
    }

    @Override
    public FindingText hiddenEvent(Finding.HiddenEvent finding) {
        String why = sights.whyNotClear(finding.event()).orElse("");
        return new FindingText(
                Optional.empty(), Outcome.TOLD, title(finding.event()), "", joined(List.of(say("why.hidden"), why)));
    }

    @Override
    public FindingText predictionResult(Finding.PredictionResult finding) {
        String chosen =
                finding.chosenId().flatMap(this::choice).map(Choice::text).orElse(say("prediction.none"));
        String reason =
                finding.chosenId().flatMap(this::choice).map(Choice::reason).orElse("");
        String right = choice(finding.correctId()).map(Choice::text).orElse("");
        return new FindingText(
                Optional.empty(),
                finding.isRight() && finding.isReasonRight() ? Outcome.RIGHT : Outcome.WRONG,
                say("prediction.title", chosen),
                say("marks.of", marks(finding.marks()), marks(MarkingRules.PREDICTION_MARKS)),
                joined(List.of(
                        reason, finding.isRight() ? "" : say("prediction.right", right), reasonChosen(finding))));
    }

    private String reasonChosen(Finding.PredictionResult finding) {
        if (finding.correctReasonId().isEmpty()) {
            return "";
        }
        Optional<Choice> chosen = finding.chosenReasonId().flatMap(this::reason);
        String written = say("prediction.reason", chosen.map(Choice::text).orElse(say("prediction.none")));
        String right = finding.isReasonRight()
                ? ""
                : say(
                        "prediction.reasonRight",
                        finding.correctReasonId()
                                .flatMap(this::reason)
                                .map(Choice::text)
                                .orElse(""));
        return joined(List.of(written, chosen.map(Choice::reason).orElse(""), right));
    }

    private Optional<Choice> reason(String id) {
        return exercise.prediction().flatMap(Prediction::reasons).flatMap(all -> all.choice(id));
    }

    private Optional<Choice> choice(String id) {
        return exercise.prediction().flatMap(asked -> asked.choice(id));
    }

    private FindingText remark(Finding finding) {
        return new FindingText(Optional.empty(), Outcome.TOLD, "", "", finding.accept(remarks));
    }

    @Override
    public FindingText wrongPlace(Finding.WrongPlace finding) {
        return remark(finding);
    }

    @Override
    public FindingText wrongPlaceByVelocity(Finding.WrongPlaceByVelocity finding) {
        return remark(finding);
    }

    @Override
    public FindingText wrongKind(Finding.WrongKind finding) {
        return remark(finding);
    }

    @Override
    public FindingText needlessDig(Finding.NeedlessDig finding) {
        return remark(finding);
    }

    @Override
    public FindingText damageLeft(Finding.DamageLeft finding) {
        return remark(finding);
    }

    @Override
    public FindingText marginalFound(Finding.MarginalFound finding) {
        return remark(finding);
    }
}
