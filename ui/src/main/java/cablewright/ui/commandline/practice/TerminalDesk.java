// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.practice;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.file.FileFault;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.practice.PracticeSession;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.environment.TerminalSize;
import cablewright.ui.terminal.PracticeTerminal;
import cablewright.ui.words.LengthUnit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Passes lines between a terminal and a practised lesson. */
public final class TerminalDesk {

    private final Environment surroundings;
    private final LengthUnit unit;
    private final String trainee;

    public TerminalDesk(Environment surroundings, LengthUnit unit, String trainee) {
        this.surroundings = surroundings;
        this.unit = unit;
        this.trainee = trainee;
    }

    public PracticeTerminal.Screen screen() {
        TerminalSize size = TerminalSize.of(surroundings);
        return new PracticeTerminal.Screen(
                surroundings.style(), size.columns(), size.lines(), unit, surroundings.locale());
    }

    /** Practises a sitting, or a lesson, until the trainee leaves or there is no more input. */
    public void practise(Lesson lesson, Optional<PracticeSession> session, Consumer<MarkSheet> committed) {
        PracticeTerminal practice = new PracticeTerminal(
                lesson,
                session,
                committed,
                trainee,
                screen(),
                Clock.systemUTC(),
                (attempt, file) -> keep(lesson, attempt, file));
        surroundings.print(practice.opening());
        BufferedReader in = new BufferedReader(new InputStreamReader(surroundings.in(), StandardCharsets.UTF_8));
        try {
            while (!practice.finished()) {
                surroundings.print("\n" + practice.prompt());
                String line = in.readLine();
                if (line == null) {
                    surroundings.print("\n" + surroundings.say("practise.noInput") + "\n");
                    return;
                }
                surroundings.print(practice.answer(line));
            }
            surroundings.print(surroundings.say("practise.goodbye") + "\n");
        } catch (IOException e) {
            throw InputProblem.of("practise.unreadable", e.getMessage());
        }
    }

    private String keep(Lesson lesson, Attempt attempt, String name) {
        Path file = surroundings.folder().resolve(name);
        if (Files.exists(file)) {
            throw new IllegalArgumentException(file + " is there already; choose another name.");
        }
        Document document = new Document.OfAttempts(new AttemptSheet(lesson.id(), List.of(attempt)));
        try {
            AtomicSave.save(file, new DocumentWriter().bytes(document));
            return file.toString();
        } catch (IOException e) {
            throw new IllegalArgumentException(FileFault.writing(file, e), e);
        }
    }
}
