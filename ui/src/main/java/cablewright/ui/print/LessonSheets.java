// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.course.InstructorNotes;
import cablewright.lessons.course.LessonPlan;
import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.course.Misreading;
import cablewright.lessons.course.Reference;
import cablewright.lessons.course.WorkedStep;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.study.FigureVariation;
import cablewright.lessons.text.Texts;
import cablewright.simulator.instrument.Trace;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes the paper of a whole lesson: what trainees read and fill in, and what only the instructor has. */
public final class LessonSheets {

    private static final double FIGURE_HEIGHT = 150;
    private static final double COVERED_WIDTHS = 2;

    private final Lesson lesson;
    private final PaperSize paper;
    private final Words words;
    private final Texts texts;

    /** What can be printed of a lesson. */
    public enum Kind {
        /** Texts, figures and worked examples. */
        TEXT(LessonSheets::text),
        /** A worksheet for each exercise. */
        WORKSHEETS(sheets -> sheets.each(SheetMaker::worksheet)),
        /** An answer sheet for each exercise; not for trainees. */
        ANSWERS(sheets -> sheets.each(SheetMaker::answerSheet)),
        /** What to remember. */
        CARD(LessonSheets::card),
        /** The notes of the instructor; not for trainees. */
        GUIDE(LessonSheets::guide);

        private final Function<LessonSheets, Printout> maker;

        Kind(Function<LessonSheets, Printout> maker) {
            this.maker = maker;
        }
    }

    /**
     * Makes paper of a lesson.
     *
     * @param lesson the lesson
     * @param paper the size of the paper
     * @param words the words, in the unit of length in which the paper is to be read
     */
    public LessonSheets(Lesson lesson, PaperSize paper, Words words) {
        this.lesson = lesson;
        this.paper = paper;
        this.words = words;
        this.texts = words.texts().sibling(SheetMaker.BUNDLE);
    }

    /**
     * Returns whether the lesson has what is to be printed.
     *
     * @param kind what is to be printed
     * @return false for a card or a guide of a lesson without
     */
    public boolean has(Kind kind) {
        return switch (kind) {
            case CARD -> lesson.plan().isPresent();
            case GUIDE -> lesson.plan().flatMap(LessonPlan::instructor).isPresent();
            default -> true;
        };
    }

    /**
     * Makes one kind of paper.
     *
     * @param kind what is to be printed
     * @return its pages
     * @throws java.util.NoSuchElementException if the lesson {@linkplain #has does not have} it
     */
    public Printout make(Kind kind) {
        return kind.maker.apply(this);
    }

    private String say(String key, Object... arguments) {
        return texts.say(key, arguments);
    }

    private Printout each(Function<SheetMaker, Printout> sheet) {
        return lesson.exercises().stream()
                .map((Exercise exercise) -> sheet.apply(new SheetMaker(exercise, paper, words)))
                .reduce(Printout::then)
                .orElseThrow();
    }

    private Printout pages(PageFlow flow, String title, String foot) {
        return new Printout(title, paper, flow.pages(title, foot, (page, of) -> texts.say("page", page, of)));
    }

    private Printout sheet(String title, String foot, Consumer<PageFlow> filling) {
        PageFlow flow = new PageFlow(paper);
        filling.accept(flow);
        return pages(flow, title, foot);
    }

    private PrintedMarkdown prose(PageFlow flow) {
        return new PrintedMarkdown(flow, words.quantities());
    }

    private Printout card() {
        LessonPlan plan = lesson.plan().orElseThrow();
        return sheet(lesson.title(), say("lesson.foot.card"), flow -> {
            prose(flow).set(plan.card());
            cautions(flow);
        });
    }

    private void cautions(PageFlow flow) {
        String all = lesson.exercises().stream()
                .flatMap(exercise -> exercise.cautions().stream())
                .distinct()
                .sorted()
                .map(words::caution)
                .collect(Collectors.joining(" "));
        flow.gap(4);
        flow.text(texts.say("cautions", all), PageFlow.CAUTION);
    }

    private Printout text() {
        return sheet(lesson.title(), say("lesson.foot.text", lesson.worldNote()), flow -> {
            PrintedMarkdown prose = prose(flow);
            prose.set(lesson.introduction());
            lesson.plan().ifPresent(plan -> {
                flow.heading(say("lesson.aim"));
                prose.set(plan.aim());
            });
            cautions(flow);
            lesson.pages().forEach(page -> page(flow, page));
        });
    }

    private void page(PageFlow flow, LessonPage page) {
        PrintedMarkdown prose = prose(flow);
        flow.heading(page.title());
        page.prediction().ifPresent(asked -> question(flow, asked));
        prose.set(page.text());
        page.figures().forEach(figure -> figure(flow, figure));
        int number = 1;
        for (WorkedStep step : page.steps()) {
            flow.text(say("lesson.step", number++, step.question()), PageFlow.INK);
            prose.set(step.answer());
        }
        page.prediction().ifPresent(asked -> prose.set(asked.explanation()));
    }

    private void question(PageFlow flow, Prediction asked) {
        prose(flow).set(asked.question());
        asked.choices().forEach(choice -> flow.text("□  " + choice.text(), PageFlow.INK));
        flow.gap(6);
    }

    private void figure(PageFlow flow, LiveFigure figure) {
        FigureVariation variation = new FigureVariation(figure);
        Trace trace = variation.at(variation.opening()).trace();
        new PrintedTracks(flow, words, trace.settings().rangeMetres())
                .trace(trace, 1.1 * highest(trace), FIGURE_HEIGHT, List.of(), figure.caption());
    }

    private static double highest(Trace trace) {
        double covered = trace.settings()
                .metresThereAndBack(COVERED_WIDTHS * trace.settings().stimulus().settledSeconds());
        double highest = 0.001;
        for (int i = trace.indexNear(covered); i < trace.count(); i++) {
            highest = Math.max(highest, Math.abs(trace.volts(i)));
        }
        return highest;
    }

    private Printout guide() {
        LessonPlan plan = lesson.plan().orElseThrow();
        InstructorNotes notes = plan.instructor().orElseThrow();
        String title = say("lesson.guide", lesson.title());
        return sheet(title, say("lesson.foot.guide"), flow -> {
            PrintedMarkdown prose = prose(flow);
            flow.text(say("lesson.minutes", notes.minutes()), PageFlow.QUIET);
            flow.heading(say("lesson.aim"));
            prose.set(plan.aim());
            if (!plan.prerequisites().isEmpty()) {
                flow.text(say("lesson.first", names(plan.prerequisites())), PageFlow.INK);
            }
            flow.heading(say("lesson.class"));
            prose.set(notes.text());
            if (!notes.demonstrations().isEmpty()) {
                flow.text(say("lesson.demonstrations", demonstrations(notes)), PageFlow.INK);
            }
            flow.heading(say("lesson.misreadings"));
            for (Misreading misreading : notes.misreadings()) {
                flow.text("• " + misreading.claim(), PageFlow.INK);
                prose.set(say("lesson.tempts", misreading.temptation()));
                prose.set(say("lesson.remedy", misreading.remedy()));
            }
            flow.heading(say("lesson.questions"));
            lesson.pages().forEach(page -> page.prediction().ifPresent(asked -> answered(flow, asked)));
            lesson.exercises().forEach(exercise -> exercise.prediction().ifPresent(asked -> answered(flow, asked)));
            cautions(flow);
        });
    }

    private void answered(PageFlow flow, Prediction asked) {
        PrintedMarkdown prose = prose(flow);
        prose.set(asked.question());
        asked.choice(asked.correctChoiceId())
                .ifPresent(right -> flow.text(texts.say("prediction.right", right.text()), PageFlow.INK));
        prose.set(asked.explanation());
    }

    private static String names(List<Reference> references) {
        return references.stream().map(Reference::id).collect(Collectors.joining(", "));
    }

    /** By their titles; a demonstration of another program by its id. */
    private String demonstrations(InstructorNotes notes) {
        Texts titles = texts.sibling("cablewright.ui.demonstrations.demonstrations");
        return notes.demonstrations().stream()
                .map(it -> titles.has(it.id().toLowerCase(Locale.ROOT) + ".title")
                        ? titles.say(it.id() + ".title")
                        : it.id())
                .collect(Collectors.joining("; "));
    }
}
