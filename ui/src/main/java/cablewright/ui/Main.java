// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import cablewright.ui.commandline.Program;
import cablewright.ui.commandline.ProgramStart;
import cablewright.ui.commandline.environment.DesktopOpener.NoWindow;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.desktop.shell.Desktop;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the program starts: with a command, it runs that; without one, it opens the desktop, or does what it can do where
 * no window can be opened.
 *
 * <p>Not itself a JavaFX application: Java refuses to start one of those from a plain jar.
 */
public final class Main {

    private static final String HEADLESS = "java.awt.headless";
    private static final String THE_ONE_WITH_A_WINDOW = "practise";

    private Main() {}

    /**
     * Starts the program and ends it with its exit code.
     *
     * @param arguments what was typed after the program's name
     */
    public static void main(String[] arguments) {
        Environment surroundings = Environment.ofProcess();
        if (arguments.length > 0 && !arguments[0].equals(THE_ONE_WITH_A_WINDOW)) {
            System.setProperty(HEADLESS, "true");
        }
        System.exit(
                arguments.length == 0
                        ? new ProgramStart(surroundings, Main::openDesktop).run()
                        : new Program(surroundings, Main::openDesktop).run(arguments));
    }

    private static void openDesktop(Optional<Path> lesson) throws NoWindow {
        try {
            if (!Desktop.displayAvailable()) {
                throw new NoWindow("there is no display");
            }
            Desktop.open(lesson.map(file -> new String[] {file.toString()}).orElseGet(() -> new String[0]));
        } catch (NoWindow e) {
            System.setProperty(HEADLESS, "true");
            throw e;
        } catch (UnsupportedOperationException | LinkageError e) {
            System.setProperty(HEADLESS, "true");
            throw new NoWindow(e.getMessage());
        }
    }
}
