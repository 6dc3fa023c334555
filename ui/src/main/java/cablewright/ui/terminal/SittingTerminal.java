// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exam.paper.PaperChoice;
import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.paper.PaperQuestion;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.sitting.HandedIn;
import cablewright.lessons.exam.sitting.Sitting;
import cablewright.lessons.text.Texts;
import cablewright.ui.terminal.Instruction.Plain;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/**
 * An exam sat line by line: a line comes in, text goes out. The same tracks and settings as in practice, but nothing is said
 * about what is right. Each change is kept before the answer is shown.
 */
public final class SittingTerminal {

    /** Bundle of its sentences. */
    public static final String BUNDLE = "cablewright.ui.terminal.sitting";

    private final Sitting sitting;
    private final SealedPaper paper;
    private final Path target;
    private final RoundView view;
    private final Texts texts;
    private final SittingMoves moves;
    private int number;
    private Round round;
    private boolean begun;
    private boolean asked;
    private boolean finished;

    /**
     * Opens a sitting.
     *
     * @param sitting the sitting
     * @param target file for the sealed answers
     * @param screen how things are shown
     */
    public SittingTerminal(Sitting sitting, Path target, PracticeTerminal.Screen screen) {
        this.sitting = sitting;
        this.paper = sitting.paper();
        this.target = target;
        this.view = new RoundView(screen);
        this.texts = new Texts(BUNDLE, screen.locale());
        this.moves = new SittingMoves(view);
        open(1);
    }

    private void open(int wanted) {
        number = wanted;
        PaperItem item = item();
        round = new Round(item, item::port, Clock.systemUTC().instant());
        round.restore(sitting.draft(item.id()).flags(), sitting.draft(item.id()).settings());
        view.reset();
    }

    private PaperItem item() {
        return paper.items().get(number - 1);
    }

    /**
     * Returns whether the trainee has asked to leave, or has handed in.
     *
     * @return whether no more lines are wanted
     */
    public boolean finished() {
        return finished;
    }

    /**
     * Returns what stands before the trainee's line: which line is open and how much time is left.
     *
     * @return a short prompt
     */
    public String prompt() {
        long seconds = sitting.left().toSeconds();
        return texts.say(
                "prompt",
                String.valueOf(number),
                String.valueOf(paper.items().size()),
                String.format(java.util.Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60));
    }

    /**
     * Says what the exam is and how it is marked, before anything of it is shown.
     *
     * @return text to print
     */
    public String opening() {
        if (sitting.isHandedIn()) {
            finished = true;
            return wrapped(texts.say("already"));
        }
        return view.style().bold(paper.title()) + "\n"
                + wrapped(texts.say(
                        "terms",
                        paper.items().size(),
                        paper.minutesAllowed(),
                        String.valueOf(Math.round(100 * paper.passMarkFraction())),
                        sitting.trainee()))
                + view.prose().ofMarkdown(paper.rules())
                + wrapped(paper.worldNote())
                + wrapped(texts.say("begin"));
    }

    private String wrapped(String text) {
        return view.prose().wrapped(text, "");
    }

    /**
     * Does what a line asks for.
     *
     * @param line what was typed; a blank line begins the exam
     * @return text to print; a sentence where the line can't be done
     * @throws IOException if what was changed can't be kept
     */
    public String answer(String line) throws IOException {
        String typed = line.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("\\s+", " ");
        if (!begun) {
            begun = true;
            sitting.tick();
            return exercise();
        }
        if (typed.isEmpty()) {
            return "";
        }
        try {
            if (typed.equals("hand in") || typed.equals("hand in yes")) {
                return handIn(typed.endsWith("yes"));
            }
            asked = false;
            return done(new InstructionParser(view.words().quantities().unit()).parse(line));
        } catch (Refused e) {
            return wrapped(e.sentence(view.texts()));
        } catch (IllegalArgumentException e) {
            return wrapped(e.getMessage());
        } catch (IllegalStateException e) {
            return wrapped(texts.say("over"));
        }
    }

    private String done(Instruction instruction) throws IOException {
        if (instruction instanceof Plain plain) {
            return plain(plain);
        }
        if (instruction instanceof Instruction.Open open) {
            if (open.number() < 1 || open.number() > paper.items().size()) {
                return wrapped(texts.say("numbers", String.valueOf(paper.items().size())));
            }
            open(open.number());
            return exercise();
        }
        if (instruction instanceof Instruction.Answer answer) {
            return chosen(answer);
        }
        if (asksFirst()) {
            return wrapped(texts.say("question"));
        }
        if (instruction instanceof Instruction.Save) {
            return wrapped(texts.say("saving"));
        }
        if (sitting.isOver() && !moves.isLooking(instruction)) {
            return wrapped(texts.say("over"));
        }
        String shown = moves.done(round, instruction);
        keep();
        return shown;
    }

    private void keep() throws IOException {
        if (!sitting.isOver()) {
            sitting.change(
                    item().id(),
                    sitting.draft(item().id()).withFlags(round.flags()).withSettings(round.settings()));
        }
    }

    private boolean asksFirst() {
        return item().question().isPresent()
                && sitting.draft(item().id()).choiceId().isEmpty();
    }

    private String plain(Plain instruction) {
        return switch (instruction) {
            case QUIT -> {
                finished = true;
                yield wrapped(texts.say("left"));
            }
            case BRIEF -> exercise();
            case EXERCISES -> list();
            case HELP -> texts.say("help") + "\n";
            case NEXT -> {
                open(number % paper.items().size() + 1);
                yield exercise();
            }
            case HINT, HINT_YES -> wrapped(texts.say("noHints"));
            case COMMIT -> wrapped(texts.say("handIn.how"));
            case FEET, METRES -> {
                view.show(instruction == Plain.FEET ? LengthUnit.FEET : LengthUnit.METRES);
                yield asksFirst() ? "" : view.tracks(round);
            }
            default -> asksFirst() ? wrapped(texts.say("question")) : moves.plain(round, instruction, list());
        };
    }

    private String exercise() {
        String place = texts.say(
                "place", String.valueOf(number), String.valueOf(paper.items().size()));
        String brief = new ExercisePage(view).brief(item(), place + " " + item().title());
        return asksFirst()
                ? brief + question(item().question().orElseThrow())
                : brief + view.tracks(round) + wrapped(texts.say("do"));
    }

    private String question(PaperQuestion question) {
        StringBuilder out = new StringBuilder(view.prose().ofMarkdown(question.question()));
        int index = 1;
        for (PaperChoice choice : question.choices()) {
            out.append(view.prose().wrapped(index++ + "  " + choice.text(), "  "));
        }
        char letter = 'a';
        for (PaperChoice reason : question.reasons()) {
            out.append(view.prose().wrapped(letter++ + "  " + reason.text(), "    "));
        }
        return out + wrapped(texts.say(question.reasons().isEmpty() ? "answer" : "answer.reason"));
    }

    private String chosen(Instruction.Answer typed) throws IOException {
        PaperQuestion question = item().question().orElse(null);
        if (question == null) {
            return wrapped(texts.say("noQuestion"));
        }
        if (!asksFirst()) {
            return wrapped(texts.say("answered"));
        }
        Optional<String> choice = id(question.choices(), typed.choice(), '1');
        Optional<String> reason = typed.reason().flatMap(given -> id(question.reasons(), given, 'a'));
        if (choice.isEmpty() || !question.isAnswer(choice.get(), reason)) {
            return question(question);
        }
        sitting.change(item().id(), sitting.draft(item().id()).withAnswer(choice.get(), reason));
        return view.tracks(round) + wrapped(texts.say("do"));
    }

    private static Optional<String> id(List<PaperChoice> choices, String typed, char first) {
        int index = typed.length() == 1 ? Character.toLowerCase(typed.charAt(0)) - first : -1;
        return index >= 0 && index < choices.size()
                ? Optional.of(choices.get(index).id())
                : Optional.empty();
    }

    private String list() {
        StringBuilder out = new StringBuilder();
        int index = 1;
        for (PaperItem one : paper.items()) {
            int flags = sitting.draft(one.id()).flags().size();
            out.append(index == number ? "> " : "  ")
                    .append(index++)
                    .append("  ")
                    .append(one.title());
            out.append("  ").append(texts.say("flags", flags)).append('\n');
        }
        return out.toString();
    }

    private String handIn(boolean sure) throws IOException {
        if (!sure || !asked) {
            asked = true;
            long blank = paper.items().stream()
                    .filter(one -> !sitting.draft(one.id()).isAnswered())
                    .count();
            return list() + wrapped(texts.say("handIn.sure", (int) blank));
        }
        HandedIn handed = sitting.handIn(target);
        finished = true;
        return wrapped(texts.say("handedIn", handed.file().toString()))
                + wrapped(texts.say("receipt", handed.receipt()));
    }
}
