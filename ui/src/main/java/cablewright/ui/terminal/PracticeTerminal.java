// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.lessons.practice.PracticeSession;
import cablewright.ui.drawing.text.TerminalStyle;
import cablewright.ui.terminal.Instruction.Plain;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * A lesson practised line by line: each typed line is answered with text. It knows no streams; the owner of the terminal
 * passes lines on and prints the answers.
 */
public final class PracticeTerminal {

    private final Lesson lesson;
    private final List<Exercise> exercises;
    private final Optional<PracticeSession> session;
    private final Consumer<MarkSheet> committed;
    private final Marker marker = new Marker();
    private final Clock clock;
    private final String trainee;
    private final AttemptKeeper keeper;
    private final RoundView view;
    private final ExercisePage page;
    private int number;
    private Round round;
    private boolean finished;
    private boolean warnedOfNoFlags;

    /** Writes an attempt to a file. */
    @FunctionalInterface
    public interface AttemptKeeper {
        /**
         * Writes an attempt, whole or not at all.
         *
         * @param attempt the attempt
         * @param file the file's name as it was typed
         * @return the name of the file that was written
         * @throws IllegalArgumentException if it can't be written; the message says why
         */
        String keep(Attempt attempt, String file);
    }

    /**
     * How things are shown.
     *
     * @param style what the terminal can show
     * @param columns characters across
     * @param lines lines
     * @param unit unit of lengths
     * @param locale language
     */
    public record Screen(TerminalStyle style, int columns, int lines, LengthUnit unit, Locale locale) {}

    /**
     * Opens a lesson at its first exercise.
     *
     * @param lesson the lesson
     * @param trainee who practises
     * @param screen how things are shown
     * @param clock gives the times at which attempts begin and end
     * @param keeper writes attempts to files
     */
    public PracticeTerminal(Lesson lesson, String trainee, Screen screen, Clock clock, AttemptKeeper keeper) {
        this(lesson, Optional.empty(), sheet -> {}, trainee, screen, clock, keeper);
    }

    /**
     * Opens a lesson, or a practice session, at its first exercise.
     *
     * @param lesson the lesson; for a session it holds the first exercise
     * @param session makes the exercises after that; empty for a lesson
     * @param committed receives each marked attempt
     * @param trainee who practises
     * @param screen how things are shown
     * @param clock gives the times at which attempts begin and end
     * @param keeper writes attempts to files
     */
    public PracticeTerminal(
            Lesson lesson,
            Optional<PracticeSession> session,
            Consumer<MarkSheet> committed,
            String trainee,
            Screen screen,
            Clock clock,
            AttemptKeeper keeper) {
        this.lesson = lesson;
        this.exercises = new ArrayList<>(lesson.exercises());
        this.session = session;
        this.committed = committed;
        this.clock = clock;
        this.trainee = trainee;
        this.keeper = keeper;
        this.view = new RoundView(screen);
        this.page = new ExercisePage(view);
        open(1);
    }

    private void open(int wanted) {
        number = wanted;
        round = new Round(exercises.get(wanted - 1), clock.instant());
        view.reset();
        warnedOfNoFlags = false;
    }

    /**
     * Returns whether the trainee has asked to leave.
     *
     * @return true once no more lines are expected
     */
    public boolean finished() {
        return finished;
    }

    /**
     * Returns whether the current exercise was handed in.
     *
     * @return true once its result is known
     */
    public boolean committed() {
        return round.sheet().isPresent();
    }

    /**
     * Returns the prompt.
     *
     * @return such as "3/8&gt; "
     */
    public String prompt() {
        return session.isPresent() ? number + "> " : number + "/" + exercises.size() + "> ";
    }

    /**
     * Welcomes a trainee and shows the first exercise.
     *
     * @return text to print
     */
    public String opening() {
        return page.lesson(lesson) + exercise();
    }

    /**
     * Carries out a line.
     *
     * @param line what was typed
     * @return text to print; a sentence where the line cannot be carried out
     */
    public String answer(String line) {
        if (line.isBlank()) {
            return "";
        }
        try {
            return done(new InstructionParser(view.words().quantities().unit()).parse(line));
        } catch (Refused e) {
            return view.prose().wrapped(e.sentence(view.texts()), "");
        } catch (IllegalArgumentException e) {
            return view.prose().wrapped(e.getMessage(), "");
        }
    }

    private String done(Instruction instruction) {
        if (instruction instanceof Plain plain) {
            return plain(plain);
        }
        if (instruction instanceof Instruction.Answer answer) {
            return predict(answer);
        }
        if (instruction instanceof Instruction.Open open) {
            return openNumber(open.number());
        }
        requireTrace();
        if (instruction instanceof Instruction.Save save) {
            return save(save.file());
        }
        if (instruction instanceof Instruction.SetFlag setFlag) {
            requireOpen();
            Flag flag = round.add(setFlag);
            return "  " + view.screen(round).flagged(flag) + "\n";
        }
        if (instruction instanceof Instruction.Remove remove) {
            requireOpen();
            round.remove(remove.letter());
            return view.screen(round).flagList();
        }
        return view.done(round, instruction);
    }

    private String plain(Plain instruction) {
        return switch (instruction) {
            case TRACE -> tracks(() -> {});
            case ZOOM_OUT -> tracks(view::zoomOut);
            case SCALE_AUTO -> tracks(() -> view.scaleTo(OptionalDouble.empty()));
            case FEET -> inUnit(LengthUnit.FEET);
            case METRES -> inUnit(LengthUnit.METRES);
            case BRIEF -> exercise();
            case SETTINGS -> new SettingsDesk(round.exercise().permitted(), view).table(round.settings(), round.end());
            case KINDS -> page.kinds();
            case LIST -> view.screen(round).flagList();
            case HINT -> hintOffer();
            case HINT_YES -> hint();
            case COMMIT -> commit();
            case NEXT -> next();
            case EXERCISES -> page.titles(exercises, number);
            case HELP -> page.help();
            case QUIT -> quit();
        };
    }

    private String tracks(Runnable first) {
        requireTrace();
        first.run();
        return view.tracks(round);
    }

    private void requireTrace() {
        if (round.asksFirst()) {
            throw new Refused("questionFirst");
        }
    }

    private void requireOpen() {
        if (committed()) {
            throw new Refused("handedIn", number);
        }
    }

    private String exercise() {
        String name = round.exercise().title();
        String title = session.isPresent()
                ? say("exercise.open", number, name)
                : say("exercise.of", number, exercises.size(), name);
        String brief = page.pages(lesson.pagesBefore(number - 1)) + page.brief(round.exercise(), title);
        return round.asksFirst()
                ? brief + page.question(round.question().orElseThrow())
                : brief + view.tracks(round) + say("exercise.next-step") + "\n";
    }

    private String predict(Instruction.Answer typed) {
        Prediction question = round.question().orElseThrow(() -> new Refused("noQuestion"));
        if (!round.asksFirst()) {
            throw new Refused("answered");
        }
        String id = byOrder(typed.choice(), '1', question.choices());
        if (question.choice(id).isEmpty()) {
            throw new Refused("answers", question.choices().size(), typed.choice());
        }
        Optional<String> reason = reason(question, typed.reason());
        round.predict(id, reason);
        return view.tracks(round);
    }

    private static Optional<String> reason(Prediction question, Optional<String> typed) {
        if (question.reasons().isEmpty()) {
            typed.ifPresent(some -> {
                throw new Refused("noReason");
            });
            return Optional.empty();
        }
        Reasons reasons = question.reasons().orElseThrow();
        String last = String.valueOf((char) ('a' + reasons.choices().size() - 1));
        String given = typed.orElseThrow(() -> new Refused("reasonMissing", last));
        String id = byOrder(given.toLowerCase(Locale.ROOT), 'a', reasons.choices());
        if (reasons.choice(id).isEmpty()) {
            throw new Refused("reasons", last, given);
        }
        return Optional.of(id);
    }

    /** The id of the choice that one character stands for; what was typed, where it stands for none. */
    private static String byOrder(String typed, char first, List<Choice> choices) {
        int index = typed.length() == 1 ? typed.charAt(0) - first : -1;
        return index >= 0 && index < choices.size() ? choices.get(index).id() : typed;
    }

    private String inUnit(LengthUnit unit) {
        view.show(unit);
        return round.asksFirst() ? "" : view.tracks(round);
    }

    private String hintOffer() {
        requireOpen();
        Hint hint = nextHint();
        int count = round.exercise().hints().size();
        return say("hint.offer", round.hintsTaken() + 1, count, hint.costMarks()) + "\n";
    }

    private String hint() {
        requireOpen();
        Hint hint = nextHint();
        round.takeHint();
        return view.prose().ofMarkdown(hint.text());
    }

    private Hint nextHint() {
        if (round.hintsTaken() >= round.exercise().hints().size()) {
            throw new Refused(round.exercise().hints().isEmpty() ? "noHints" : "noMoreHints");
        }
        return round.exercise().hints().get(round.hintsTaken());
    }

    private String commit() {
        requireTrace();
        requireOpen();
        if (round.flags().isEmpty() && !warnedOfNoFlags) {
            warnedOfNoFlags = true;
            return say("commit.noFlags") + "\n";
        }
        committed.accept(round.commit(marker, trainee, clock.instant()));
        String behind = number == exercises.size() ? page.pages(lesson.pagesBefore(number)) : "";
        return view.result(round) + "\n" + behind + onward() + "\n";
    }

    private String onward() {
        boolean more = session.filter(sitting -> !sitting.isOver()).isPresent();
        if (more || number < exercises.size()) {
            return say("next.exercise") + left();
        }
        return session.isEmpty()
                ? say("next.lastOfLesson")
                : say(
                        "next.roundOver",
                        session.get().answered(),
                        Quantities.number(100 * session.get().fraction(), 0));
    }

    private String left() {
        return session.flatMap(PracticeSession::left)
                .map(time -> " " + say("next.left", time.toMinutes(), time.toSecondsPart()))
                .orElse("");
    }

    private String next() {
        if (number == exercises.size()) {
            session.flatMap(PracticeSession::next).ifPresent(exercises::add);
        }
        if (number == exercises.size()) {
            throw new Refused("lastExercise");
        }
        open(number + 1);
        return exercise();
    }

    private String openNumber(int wanted) {
        if (wanted < 1 || wanted > exercises.size()) {
            throw new Refused("exerciseNumber", exercises.size());
        }
        open(wanted);
        return exercise();
    }

    private String save(String file) {
        Attempt attempt = round.attempt().orElseThrow(() -> new Refused("saveEarly"));
        return say("saved", keeper.keep(attempt, file)) + "\n";
    }

    private String say(String key, Object... arguments) {
        return view.texts().say(key, arguments);
    }

    private String quit() {
        finished = true;
        return "";
    }
}
