// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.file.FileFault;
import cablewright.ui.commandline.environment.DesktopOpener;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.environment.ReaderGone;
import cablewright.ui.commandline.practice.TerminalDesk;
import cablewright.ui.terminal.Playthrough;
import cablewright.ui.words.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What happens without a command: the desktop where a window can be opened; practice in the terminal where there is one;
 * or else the first exercise is played through, so that whoever runs it sees what it is about.
 */
public final class ProgramStart {

    private final Environment surroundings;
    private final DesktopOpener desktop;

    /**
     * Makes a start.
     *
     * @param surroundings where the program runs
     * @param desktop opens the desktop
     */
    public ProgramStart(Environment surroundings, DesktopOpener desktop) {
        this.surroundings = surroundings;
        this.desktop = desktop;
    }

    /**
     * Starts.
     *
     * @return the exit code
     */
    public int run() {
        try {
            return open();
        } catch (ReaderGone e) {
            return ExitCode.DONE;
        } catch (InputProblem e) {
            e.problems(surroundings).forEach(this::say);
            return ExitCode.INPUT_WRONG;
        } catch (RuntimeException e) {
            return Program.tellFault(surroundings, List.of(), e);
        }
    }

    private int open() {
        try {
            desktop.open(Optional.empty());
            return ExitCode.DONE;
        } catch (DesktopOpener.NoWindow e) {
            say(surroundings.say("start.noWindow", e.getMessage()));
        }
        if (surroundings.interactive()) {
            say(surroundings.say("start.terminal"));
            new TerminalDesk(surroundings, LengthUnit.METRES, "trainee")
                    .practise(BuiltInLessons.first(), Optional.empty(), sheet -> {});
        } else {
            say(surroundings.say("start.playThrough"));
            playThrough();
        }
        return ExitCode.DONE;
    }

    private void playThrough() {
        Exercise exercise = BuiltInLessons.first().exercises().get(0);
        TerminalDesk desk = new TerminalDesk(surroundings, LengthUnit.METRES, "sample");
        Playthrough play = new Playthrough(exercise, desk.screen());
        surroundings.print(play.question());
        surroundings.print(savePicture("cablewright-" + exercise.id(), play.picture()));
        surroundings.print(play.answer());
    }

    /** Saves a picture among temporary files: the working folder is left as it was. */
    private String savePicture(String name, byte[] picture) {
        Path folder = surroundings.temporaryFolder();
        try {
            Path file = Files.createTempFile(folder, name + "-", ".png");
            Files.write(file, picture);
            return surroundings.say("start.picture", file) + "\n\n";
        } catch (IOException e) {
            say(FileFault.writing(folder, e));
            return surroundings.say("start.noPicture") + "\n\n";
        }
    }

    private void say(String text) {
        surroundings.remark("cablewright: " + text);
    }
}
