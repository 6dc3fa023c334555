// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.content.BuiltInLessons;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Walks every page in every mode and size. With {@code -Dscreens.pictures=FOLDER} it writes a picture of each as well.
 *
 * <p>The window's content is laid out at each size; the window itself keeps the size of the screen in memory.
 */
@ExtendWith(ApplicationExtension.class)
class LayoutTest {

    private static final double TRACE_SHARE = 0.4;

    private static final List<Size> SIZES = List.of(new Size(1280, 720), new Size(1600, 1000), new Size(3840, 2160));

    private static final Optional<Path> PICTURES =
            Optional.ofNullable(System.getProperty("screens.pictures")).map(Path::of);

    private DesktopWindow window;
    private Stage stage;

    @TempDir
    private Path folder;

    private record Size(double width, double height) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.0fx%.0f", width, height);
        }
    }

    @Start
    void start(Stage opened) {
        // A stage of its own: that of the tests before keeps their theme.
        stage = new Stage();
        window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread());
        window.show(BuiltInLessons.first());
    }

    @Test
    void nothingIsCutHiddenOrFaintInALightWindow() throws IOException {
        walk("light", SIZES);
    }

    @Test
    void nothingIsCutHiddenOrFaintInADarkWindowWhichDiffersInItsColoursAlone() throws IOException {
        fx(() -> window.model().switchDark());
        walk("dark", SIZES.subList(0, 1));
    }

    private static void fx(Runnable action) {
        WaitForAsyncUtils.waitForAsyncFx(120_000, action);
    }

    private void walk(String theme, List<Size> sizes) throws IOException {
        Map<String, List<String>> faults = new TreeMap<>();
        Set<String> looked = FocusFaults.nothingYet();
        ScreenStates states = new ScreenStates(window, MeasuredExample.sweep(folder));
        states.inOrder()
                .forEach((name, state) -> fx(() -> {
                    state.run();
                    for (Size size : sizes) {
                        for (boolean projector : new boolean[] {false, true}) {
                            window.model().projectorProperty().set(projector);
                            Region root = layOut(size);
                            String where = name + " " + theme + (projector ? " projector " : " ") + size;
                            List<String> found = new ArrayList<>(LayoutFaults.of(root));
                            found.addAll(shares(root, name));
                            if (size.equals(SIZES.get(0))) {
                                found.addAll(ContrastFaults.of(root));
                                found.addAll(FocusFaults.of(root, looked));
                            }
                            found.forEach(fault -> faults.computeIfAbsent(fault, it -> new ArrayList<>())
                                    .add(where));
                            PICTURES.filter(to -> size.width() < 2000)
                                    .ifPresent(to -> picture(root, to.resolve(where.replace(' ', '-') + ".png")));
                        }
                    }
                    window.model().projectorProperty().set(false);
                }));
        StringBuilder said = new StringBuilder();
        faults.forEach((fault, where) -> said.append('\n')
                .append(fault)
                .append("\n      in ")
                .append(where.get(0))
                .append(where.size() > 1 ? " and " + (where.size() - 1) + " more" : ""));
        assertTrue(faults.isEmpty(), said.toString());
    }

    /** The trace is what matters most: on the pages that show one it has two fifths of the window's height. */
    private static List<String> shares(Region root, String state) {
        Node trace = root.lookup("#trace-track");
        if (trace == null || !trace.isVisible() || state.equals("help")) {
            return List.of();
        }
        double share = trace.getLayoutBounds().getHeight() / root.getHeight();
        return share >= TRACE_SHARE
                ? List.of()
                : List.of(String.format(Locale.ROOT, "the trace has %.0f %% of the height in %s", 100 * share, state));
    }

    /** Lays the content out, with what it changes while it is laid out. */
    private Region layOut(Size size) {
        Region root = (Region) stage.getScene().getRoot();
        for (int i = 0; i < 3; i++) {
            root.resize(size.width(), size.height());
            root.applyCss();
            root.layout();
        }
        return root;
    }

    private static void picture(Region root, Path file) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(SwingFXUtils.fromFXImage(root.snapshot(null, null), null), "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
