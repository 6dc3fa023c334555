// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.classbook.UserFolder;
import cablewright.ui.desktop.bench.model.BenchStore;
import cablewright.ui.desktop.home.HomeStore;
import cablewright.ui.desktop.task.Threads;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.stage.Stage;

/** The desktop program: opens the window in which people work. */
public final class Desktop extends Application {

    private static final Logger JAVAFX_LOG = Logger.getLogger("javafx");

    /** Makes the desktop; JavaFX calls this. */
    public Desktop() {}

    /**
     * Opens the desktop and returns when its last window is closed. To be called once.
     *
     * @param arguments what was typed after the program's name
     * @throws UnsupportedOperationException if no window can be opened here, with the reason: no display, or a system
     *     library is missing
     */
    public static void open(String... arguments) {
        // At each start JavaFX warns that it is on the class path, which is where this program keeps it.
        JAVAFX_LOG.setFilter(entry -> !entry.getMessage().startsWith("Unsupported JavaFX configuration"));
        launch(Desktop.class, arguments);
    }

    /**
     * Returns whether there is a display to open a window on.
     *
     * @return false on a Unix machine without X or Wayland, unless windows are to be drawn in memory
     */
    public static boolean displayAvailable() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        boolean hasItsOwn = system.contains("windows") || system.contains("mac");
        boolean inMemory = "Monocle".equals(System.getProperty("glass.platform"));
        return hasItsOwn || inMemory || isSet("DISPLAY") || isSet("WAYLAND_DISPLAY");
    }

    private static boolean isSet(String variable) {
        String value = System.getenv(variable);
        return value != null && !value.isBlank();
    }

    @Override
    public void start(Stage stage) {
        DesktopWindow window = new DesktopWindow(
                stage,
                WindowMemory.ofThisUser(),
                Threads.besideTheScreen("cablewright-work"),
                ClassRecords.ofThisUser(System.getenv()),
                BenchStore.ofThisUser(),
                HomeStore.ofThisUser(System.getenv()),
                Locale.getDefault());
        Thread.setDefaultUncaughtExceptionHandler(window.faults(List.of(
                UserFolder.data(System.getenv()).resolve("faults"), Path.of(System.getProperty("java.io.tmpdir")))));
        window.showOpening();
        getParameters().getUnnamed().stream()
                .findFirst()
                .map(Path::of)
                .ifPresentOrElse(file -> window.openFirst(Optional.of(file)), window::showHome);
    }
}
