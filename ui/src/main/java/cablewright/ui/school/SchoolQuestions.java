// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.BestView;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.marking.MarkingRules;
import cablewright.lessons.marking.PlaceMark;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import cablewright.ui.drawing.pen.PictureFormat;
import cablewright.ui.print.TracksPicture;
import cablewright.ui.words.KindChoices;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes questions of a lesson: of each exercise its question before the trace, and each event that is asked for. */
final class SchoolQuestions {

    static final String BUNDLE = "cablewright.ui.school.school";

    private static final int MOST_WRONG_KINDS = 4;

    /** Kinds of the same signature can be the same on a trace, and earn two thirds; these are not offered. */
    private static final double MOST_ALIKE = 0.5;

    private final Words words;
    private final Texts texts;
    private final Marker marker = new Marker();

    SchoolQuestions(Words words) {
        this.words = words;
        this.texts = words.texts().sibling(BUNDLE);
    }

    List<SchoolQuestion> of(Lesson lesson) {
        List<SchoolQuestion> all = new ArrayList<>();
        lesson.exercises().forEach(exercise -> all.addAll(of(exercise)));
        return all;
    }

    private List<SchoolQuestion> of(Exercise exercise) {
        AnswerKey key = marker.demand(exercise);
        MarkSheet perfect = marker.mark(exercise, KeyedAnswer.of(key));
        PropagationCache cache = new PropagationCache();
        List<Finding.Matched> found = perfect.findings().stream()
                .flatMap(finding ->
                        finding instanceof Finding.Matched matched ? Stream.of(matched) : Stream.<Finding.Matched>of())
                .toList();
        List<SchoolQuestion> questions = new ArrayList<>();
        exercise.prediction()
                .ifPresent(asked -> questions.add(new SchoolQuestion(
                        exercise.id() + "-before",
                        texts.say("title.before", exercise.title()),
                        known(exercise) + "\n\n" + text(asked.question()),
                        new byte[0],
                        "",
                        before(asked),
                        text(asked.explanation()))));
        for (Finding.Matched one : found) {
            questions.add(event(exercise, one, found, cache));
        }
        return questions;
    }

    private String text(String markdown) {
        return words.quantities().inText(markdown);
    }

    private String known(Exercise exercise) {
        String cautions = exercise.cautions().stream().map(words::caution).collect(Collectors.joining(" "));
        return text(exercise.brief()) + "\n\n" + texts.say("ask.local") + " " + cautions;
    }

    private List<SchoolQuestion.Part> before(Prediction asked) {
        double marks = MarkingRules.PREDICTION_MARKS;
        double answer = asked.reasons().isPresent() ? marks * MarkingRules.ANSWER_WITHOUT_REASON : marks;
        List<SchoolQuestion.Part> parts = new ArrayList<>();
        parts.add(new SchoolQuestion.OneOf(
                "ANSWER", texts.say("ask.answer"), answer, answers(asked.choices(), asked.correctChoiceId())));
        asked.reasons()
                .ifPresent(reasons -> parts.add(new SchoolQuestion.OneOf(
                        "REASON",
                        texts.say("ask.reason"),
                        marks - answer,
                        answers(reasons.choices(), reasons.correctChoiceId()))));
        return parts;
    }

    private List<SchoolQuestion.Answer> answers(List<Choice> choices, String right) {
        return choices.stream()
                .map(choice -> new SchoolQuestion.Answer(
                        text(choice.text()), choice.id().equals(right) ? 1 : 0, text(choice.reason())))
                .toList();
    }

    private SchoolQuestion event(
            Exercise exercise, Finding.Matched asked, List<Finding.Matched> all, PropagationCache cache) {
        BestView best = asked.event().best();
        LineEnd end = asked.flag().end();
        List<Finding.Matched> along = all.stream()
                .filter(one -> one.flag().end() == end)
                .sorted(Comparator.comparingDouble(one -> one.flag().startMetres()))
                .toList();
        int number = all.indexOf(asked) + 1;
        Trace trace = Measurement.at(end, exercise.cable(), exercise.instrument(), cache)
                .trace(best.settings().withVelocityFraction(asked.flag().velocityFraction()), exercise.noiseSeed());
        String which = along.size() == 1
                ? texts.say("ask.only", words.end(end))
                : texts.say("ask.which", along.indexOf(asked) + 1, along.size(), words.end(end));
        return new SchoolQuestion(
                exercise.id() + "-" + number,
                texts.say("title.event", exercise.title(), number),
                known(exercise) + "\n\n" + which,
                TracksPicture.withoutCable(exercise, trace, end, words).draw(PictureFormat.PNG),
                texts.say(
                        "picture",
                        words.end(end),
                        words.quantities().shortLength(trace.settings().rangeMetres())),
                parts(exercise, asked),
                text(exercise.explanation()));
    }

    private List<SchoolQuestion.Part> parts(Exercise exercise, Finding.Matched asked) {
        LineEvent event = asked.event();
        List<SchoolQuestion.Part> parts = new ArrayList<>();
        List<PlaceMark> places = asked.places();
        for (int i = 0; i < places.size(); i++) {
            String ask = places.size() == 1 ? "ask.place" : i == 0 ? "ask.begin" : "ask.stop";
            parts.add(place("PLACE" + (i + 1), texts.say(ask, unit()), places.get(i)));
        }
        parts.add(new SchoolQuestion.OneOf(
                "KIND", texts.say("ask.kind"), event.marks().kindMarks(), kinds(exercise, event)));
        boolean belongs = event.truth() == Verdict.BELONGS;
        parts.add(new SchoolQuestion.OneOf(
                "VERDICT",
                texts.say("ask.verdict"),
                event.marks().verdictMarks(),
                List.of(
                        new SchoolQuestion.Answer(words.verdict(Verdict.BELONGS), belongs ? 1 : 0, ""),
                        new SchoolQuestion.Answer(words.verdict(Verdict.DAMAGE), belongs ? 0 : 1, ""))));
        return parts;
    }

    private String unit() {
        return words.quantities().unit().symbol();
    }

    /** Right from the true place to where the trace shows it, and the tolerance on both sides. */
    private SchoolQuestion.Number place(String name, String prompt, PlaceMark place) {
        var unit = words.quantities().unit();
        double middle = (place.fromMetres() + place.toMetres()) / 2;
        double half = (place.toMetres() - place.fromMetres()) / 2 + place.toleranceMetres();
        return new SchoolQuestion.Number(
                name, prompt, place.outOf(), unit.fromMetres(middle), unit.fromMetres(half), unit.symbol());
    }

    /** The right kind, and those that come nearest to it among those that must look different on a trace. */
    private List<SchoolQuestion.Answer> kinds(Exercise exercise, LineEvent event) {
        List<EventKind> wrong = KindChoices.of(exercise).stream()
                .filter(kind -> kind != event.kind())
                .sorted(Comparator.comparingDouble(kind -> -MarkingRules.kindShare(kind, event.kind())))
                .filter(kind -> MarkingRules.kindShare(kind, event.kind()) < MOST_ALIKE)
                .limit(MOST_WRONG_KINDS)
                .toList();
        List<EventKind> offered = new ArrayList<>(wrong);
        offered.add(event.kind());
        offered.sort(Comparator.naturalOrder());
        return offered.stream()
                .map(kind ->
                        new SchoolQuestion.Answer(words.kind(kind), MarkingRules.kindShare(kind, event.kind()), ""))
                .toList();
    }
}
