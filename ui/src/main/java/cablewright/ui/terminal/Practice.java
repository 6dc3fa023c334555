package cablewright.ui.terminal;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Hint;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.Prediction;
import cablewright.lessons.marking.Marker;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.chart.CableDrawing;
import cablewright.ui.picture.TerminalStyle;
import cablewright.ui.picture.TracePlot.Window;
import cablewright.ui.terminal.Instruction.Plain;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A lesson practised line by line: a line comes in, text goes out. Knows no stream; whoever owns the terminal passes lines
 * on and prints what comes back.
 */
public final class Practice {

    private final Lesson lesson;
    private final Marker marker;
    private final Clock clock;
    private final String trainee;
    private final TerminalStyle style;
    private final AttemptKeeper keeper;
    private final int columns;
    private final int lines;
    private Words words;
    private int number;
    private Round round;
    private Optional<Window> zoom = Optional.empty();
    private OptionalDouble scale = OptionalDouble.empty();
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
     */
    public record Screen(TerminalStyle style, int columns, int lines, LengthUnit unit) {}

    /**
     * Opens a lesson at its first exercise.
     *
     * @param lesson the lesson
     * @param trainee who practises
     * @param screen how things are shown
     * @param clock tells when attempts begin and end
     * @param keeper writes attempts to files
     */
    public Practice(Lesson lesson, String trainee, Screen screen, Clock clock, AttemptKeeper keeper) {
        this.lesson = lesson;
        this.marker = new Marker();
        this.clock = clock;
        this.trainee = trainee;
        this.style = screen.style();
        this.columns = screen.columns();
        this.lines = screen.lines();
        this.words = Words.in(screen.unit());
        this.keeper = keeper;
        open(1);
    }

    private void open(int wanted) {
        number = wanted;
        round = new Round(lesson.exercises().get(wanted - 1), clock.instant());
        zoom = Optional.empty();
        scale = OptionalDouble.empty();
        warnedOfNoFlags = false;
    }

    /**
     * Tells whether the trainee has asked to leave.
     *
     * @return whether no more lines are wanted
     */
    public boolean finished() {
        return finished;
    }

    /**
     * Tells whether the exercise at hand was handed in.
     *
     * @return whether its result is known
     */
    public boolean committed() {
        return round.sheet().isPresent();
    }

    /**
     * Returns what stands before the trainee's line.
     *
     * @return a short prompt
     */
    public String prompt() {
        return number + "/" + lesson.exercises().size() + "> ";
    }

    /**
     * Welcomes a trainee and shows the first exercise.
     *
     * @return text to print
     */
    public String opening() {
        return style.bold(lesson.title()) + "\n" + prose().ofMarkdown(lesson.introduction())
                + prose().wrapped(lesson.worldNote(), "") + "\n" + exercise();
    }

    /**
     * Does what a line asks for.
     *
     * @param line what was typed
     * @return text to print; a sentence where the line can't be done
     */
    public String answer(String line) {
        if (line.isBlank()) {
            return "";
        }
        try {
            return done(new InstructionParser(words.quantities().unit()).parse(line));
        } catch (Refused | IllegalArgumentException e) {
            return prose().wrapped(e.getMessage(), "");
        }
    }

    private String done(Instruction instruction) {
        if (instruction instanceof Plain) {
            return plain((Plain) instruction);
        }
        if (instruction instanceof Instruction.Answer) {
            return predict(((Instruction.Answer) instruction).choice());
        }
        if (instruction instanceof Instruction.Open) {
            return openNumber(((Instruction.Open) instruction).number());
        }
        requireTrace();
        if (instruction instanceof Instruction.At) {
            return screen().reading(((Instruction.At) instruction).metres());
        }
        if (instruction instanceof Instruction.Zoom) {
            return zoomTo((Instruction.Zoom) instruction);
        }
        if (instruction instanceof Instruction.Scale) {
            scale = OptionalDouble.of(((Instruction.Scale) instruction).share());
            return tracks();
        }
        if (instruction instanceof Instruction.Save) {
            return save(((Instruction.Save) instruction).file());
        }
        return flagOrSetting(instruction);
    }

    private String flagOrSetting(Instruction instruction) {
        if (instruction instanceof Instruction.SetFlag) {
            requireOpen();
            Flag flag = round.add((Instruction.SetFlag) instruction);
            return "  " + screen().flagged(flag) + "\n";
        }
        if (instruction instanceof Instruction.Remove) {
            requireOpen();
            round.remove(((Instruction.Remove) instruction).letter());
            return screen().flagList();
        }
        return set(instruction);
    }

    private String set(Instruction instruction) {
        SettingsDesk desk = new SettingsDesk(round.exercise().permitted(), words);
        if (instruction instanceof Instruction.Width) {
            round.set(desk.width(round.settings(), (Instruction.Width) instruction));
        } else if (instruction instanceof Instruction.Velocity) {
            round.set(desk.velocity(round.settings(), ((Instruction.Velocity) instruction).fraction()));
            zoom = Optional.empty();
        } else if (instruction instanceof Instruction.Range) {
            round.set(desk.range(round.settings(), ((Instruction.Range) instruction).metres()));
            zoom = Optional.empty();
        } else if (instruction instanceof Instruction.Gain) {
            round.set(desk.gain(round.settings(), ((Instruction.Gain) instruction).decibels()));
        } else if (instruction instanceof Instruction.Averages) {
            round.set(desk.averages(round.settings(), ((Instruction.Averages) instruction).count()));
        } else {
            round.joinTo(desk.end(((Instruction.TestedEnd) instruction).end()));
        }
        return tracks();
    }

    private String plain(Plain instruction) {
        return switch (instruction) {
            case TRACE -> {
                requireTrace();
                yield tracks();
            }
            case BRIEF -> exercise();
            case SETTINGS -> new SettingsDesk(round.exercise().permitted(), words).table(round.settings(), round.end());
            case KINDS -> kinds();
            case LIST -> screen().flagList();
            case HINT -> hintOffer();
            case HINT_YES -> hint();
            case COMMIT -> commit();
            case NEXT -> next();
            case EXERCISES -> exercises();
            case FEET -> inUnit(LengthUnit.FEET);
            case METRES -> inUnit(LengthUnit.METRES);
            case ZOOM_OUT -> zoomOut();
            case SCALE_AUTO -> scaleAuto();
            case HELP -> HelpText.all();
            case QUIT -> quit();
        };
    }

    private void requireTrace() {
        if (round.asksFirst()) {
            throw new Refused(
                    "First the question, since the trace would give the answer away: type 'answer 1', 'answer 2' …");
        }
    }

    private void requireOpen() {
        if (committed()) {
            throw new Refused("This exercise is handed in. Type 'next' for the next one, or 'exercise " + number
                    + "' to try this one anew.");
        }
    }

    private RoundScreen screen() {
        return new RoundScreen(round, words, style, columns, lines);
    }

    private Prose prose() {
        return new Prose(columns - 1);
    }

    private String exercise() {
        Exercise exercise = round.exercise();
        StringBuilder out = new StringBuilder(
                style.bold("Exercise " + number + " of " + lesson.exercises().size() + ": " + exercise.title()) + "\n");
        out.append(prose().ofMarkdown(exercise.brief()));
        for (Caution caution : exercise.cautions()) {
            out.append(style.bad(prose().wrapped(words.caution(caution), "  ! ").stripTrailing()))
                    .append('\n');
        }
        out.append('\n');
        if (round.asksFirst()) {
            return out + question(round.question().orElseThrow());
        }
        return out + tracks() + "Type 'help' for what you can do, 'commit' when your flags are set.\n";
    }

    private String question(Prediction question) {
        StringBuilder out = new StringBuilder(prose().ofMarkdown(question.question()));
        int choice = 1;
        for (var each : question.choices()) {
            out.append(prose().wrapped(choice++ + "  " + each.text(), "  "));
        }
        return out + "Type 'answer' and the number; then the trace is shown.\n";
    }

    private String predict(String typed) {
        Prediction question =
                round.question().orElseThrow(() -> new Refused("This exercise asks no question before its trace."));
        if (!round.asksFirst()) {
            throw new Refused("The question is answered already.");
        }
        String id = typed;
        if (typed.matches("[0-9]{1,2}")) {
            int index = Integer.parseInt(typed) - 1;
            if (index >= 0 && index < question.choices().size()) {
                id = question.choices().get(index).id();
            }
        }
        if (question.choice(id).isEmpty()) {
            throw new Refused("Answers are 1 to " + question.choices().size() + "; I read \"" + typed + "\".");
        }
        round.predict(id);
        return tracks();
    }

    private String tracks() {
        Window whole = screen().wholeWindow();
        Window shown =
                zoom.map(part -> screen().fitted(part.left(), part.right())).orElse(whole);
        if (scale.isPresent()) {
            double height = 100 * scale.getAsDouble();
            shown = new Window(shown.left(), shown.right(), -height, height);
        }
        return screen().tracks(shown);
    }

    private String zoomTo(Instruction.Zoom asked) {
        LengthUnit unit = words.quantities().unit();
        Window whole = screen().wholeWindow();
        double left = Math.max(whole.left(), unit.fromMetres(Math.min(asked.fromMetres(), asked.toMetres())));
        double right = Math.min(whole.right(), unit.fromMetres(Math.max(asked.fromMetres(), asked.toMetres())));
        if (right - left < 1e-3 * (whole.right() - whole.left())) {
            throw new Refused("There is nothing to see between those two distances within the range of "
                    + words.quantities().shortLength(round.settings().rangeMetres()) + ".");
        }
        zoom = Optional.of(new Window(left, right, whole.bottom(), whole.top()));
        return tracks();
    }

    private String zoomOut() {
        requireTrace();
        zoom = Optional.empty();
        return tracks();
    }

    private String scaleAuto() {
        requireTrace();
        scale = OptionalDouble.empty();
        return tracks();
    }

    private String inUnit(LengthUnit unit) {
        words = words.with(unit);
        zoom = Optional.empty();
        return round.asksFirst() ? "" : tracks();
    }

    private String kinds() {
        StringBuilder out = new StringBuilder();
        Arrays.stream(EventKind.values())
                .forEach(kind -> out.append(String.format("  %-15s %s\n", kind.id(), words.kind(kind))));
        return out + "With 'belongs' or 'damage' behind it: flag 84.2 pinch damage\n";
    }

    private String hintOffer() {
        requireOpen();
        Hint hint = nextHint();
        return "Hint " + (round.hintsTaken() + 1) + " of "
                + round.exercise().hints().size() + " costs " + FindingWords.marks(hint.costMarks())
                + " marks; type 'hint yes' to take it.\n";
    }

    private String hint() {
        requireOpen();
        Hint hint = nextHint();
        round.takeHint();
        return prose().ofMarkdown(hint.text());
    }

    private Hint nextHint() {
        if (round.hintsTaken() >= round.exercise().hints().size()) {
            throw new Refused(
                    round.exercise().hints().isEmpty() ? "This exercise has no hints." : "There are no more hints.");
        }
        return round.exercise().hints().get(round.hintsTaken());
    }

    private String commit() {
        requireTrace();
        requireOpen();
        if (round.flags().isEmpty() && !warnedOfNoFlags) {
            warnedOfNoFlags = true;
            return "No flags are set. If there is nothing to flag, type 'commit' once more.\n";
        }
        round.commit(marker, trainee, clock.instant());
        return result();
    }

    private String result() {
        ResultScreen result = new ResultScreen(round.exercise(), words, style, columns - 1);
        double top = 1 / round.settings().stimulus().shortestEdgeSeconds();
        CableDrawing drawing = CableDrawing.of(
                round.exercise().cable(), round.end(), round.settings().velocityFraction(), top);
        String onward = number < lesson.exercises().size()
                ? "\nType 'next' for the next exercise.\n"
                : "\nThat was the last exercise of the lesson. Type 'quit' to leave.\n";
        return tracks() + "\n" + result.marks(round.sheet().orElseThrow()) + "\n" + result.cable(round.end(), drawing)
                + onward;
    }

    private String next() {
        if (number == lesson.exercises().size()) {
            throw new Refused("This is the last exercise. 'exercise 1' opens the first, 'quit' leaves.");
        }
        open(number + 1);
        return exercise();
    }

    private String openNumber(int wanted) {
        if (wanted < 1 || wanted > lesson.exercises().size()) {
            throw new Refused(
                    "Exercises are numbered 1 to " + lesson.exercises().size() + ".");
        }
        open(wanted);
        return exercise();
    }

    private String exercises() {
        StringBuilder out = new StringBuilder();
        int each = 1;
        for (Exercise exercise : lesson.exercises()) {
            out.append(each == number ? "> " : "  ")
                    .append(each++)
                    .append("  ")
                    .append(exercise.title())
                    .append('\n');
        }
        return out.toString();
    }

    private String save(String file) {
        Attempt attempt =
                round.attempt().orElseThrow(() -> new Refused("Hand the flags in first: type 'commit', then save."));
        return "Saved in " + keeper.keep(attempt, file) + "\n";
    }

    private String quit() {
        finished = true;
        return "";
    }
}
