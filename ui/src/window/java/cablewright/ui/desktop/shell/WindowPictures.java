// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.practice.model.Claim;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.desktop.wave.WaveViewModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.stage.Stage;
import javafx.util.Duration;
import javax.imageio.ImageIO;

/**
 * Takes the pictures of the real window that the project's pages show: the built-in lesson, before and after commit, light
 * and dark, at the projector's scale and in a small window. {@code .pictures/make.sh} runs it without a display.
 */
public final class WindowPictures {

    private static final double WIDTH_PIXELS = 1440;
    private static final double HEIGHT_PIXELS = 900;
    private static final double SMALL_WIDTH_PIXELS = 1024;
    private static final double SMALL_HEIGHT_PIXELS = 700;

    private WindowPictures() {}

    /**
     * Takes the pictures and ends.
     *
     * @param arguments the folder to write them into
     */
    public static void main(String[] arguments) {
        if (arguments.length != 1) {
            throw new IllegalArgumentException("name the one folder to write the pictures into");
        }
        Application.launch(Photographer.class, arguments);
    }

    /** Plays a trainee and takes pictures meanwhile. JavaFX makes and starts it. */
    public static final class Photographer extends Application {

        private static final double WAVE_SHARE = 0.62;
        private static final Duration SETTLE = Duration.millis(400);

        private final Deque<Runnable> steps = new ArrayDeque<>();

        /** Makes it; JavaFX calls this. */
        public Photographer() {}

        @Override
        public void start(Stage stage) {
            Path folder = Path.of(getParameters().getUnnamed().get(0));
            DesktopWindow window = new DesktopWindow(stage, WindowMemory.none(), Threads.sameThread());
            window.show(BuiltInLessons.find("harbour-line").orElseThrow());
            steps.add(() -> size(stage, WIDTH_PIXELS, HEIGHT_PIXELS));
            read(window, stage, folder);
            compare(window, stage, folder);
            ask(window, stage, folder);
            build(window, stage, folder);
            shrink(window, stage, folder);
            next();
        }

        private void read(DesktopWindow window, Stage stage, Path folder) {
            picture("open", stage, folder);
            steps.add(() -> {
                window.practice().select(5);
                flagTheSlipway(window.practice().current());
            });
            picture("flags", stage, folder);
            steps.add(() -> {
                window.practice().current().commit();
                window.practice().current().axis().moveCursorTo(72.4);
            });
            picture("committed", stage, folder);
            steps.add(() -> {
                WaveViewModel wave = window.practice().current().reveal().wave();
                wave.scrubTo(0);
                wave.scrubTo((int) (WAVE_SHARE * wave.framesProperty().get()));
                save(stage, folder.resolve("wave.png"));
                wave.forget();
            });
            steps.add(() -> {
                ExerciseViewModel exercise = window.practice().current();
                exercise.sheetProperty().get().orElseThrow().findings().stream()
                        .flatMap(finding -> Claim.in(finding).stream())
                        .findFirst()
                        .ifPresent(exercise.reveal()::compare);
            });
            picture("claim", stage, folder);
        }

        /** A reading with one mistake: the wet length is placed well, the splice is called a pinch. */
        private static void flagTheSlipway(ExerciseViewModel exercise) {
            exercise.settings().gainDecibelsProperty().set(20.0);
            exercise.settings().averagesProperty().set(64);
            exercise.settings().rangeMetresProperty().set(200.0);
            exercise.flags().place(32);
            exercise.flags().say("A", EventKind.PINCH);
            exercise.flags().place(71);
            exercise.flags().stretchSelected(77.1);
            exercise.flags().say("B", EventKind.WATER);
            exercise.axis().moveCursorTo(71.6);
        }

        private void compare(DesktopWindow window, Stage stage, Path folder) {
            steps.add(() -> window.model().switchDark());
            picture("dark", stage, folder);
            steps.add(() -> {
                window.model().switchDark();
                window.model().switchProjector();
            });
            picture("projector", stage, folder);
            steps.add(() -> window.model().switchProjector());
        }

        /** An instructor's line: a pinch 12 m past a tap, and water that ran back to the splice. */
        private void build(DesktopWindow window, Stage stage, Path folder) {
            steps.add(() -> {
                window.view().show(Pages.BENCH);
                window.bench().files().start(BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT));
                put(window.bench(), Insertable.PINCH, 103 + 12);
                put(window.bench(), Insertable.WATER, 97);
                window.bench().trace().axis().moveCursorTo(99);
            });
            picture("bench", stage, folder);
            steps.add(() -> window.model().switchDark());
            picture("bench-dark", stage, folder);
            steps.add(() -> {
                window.model().switchDark();
                window.model().switchProjector();
                window.bench().events().selectNone();
            });
            picture("bench-projector", stage, folder);
            steps.add(() -> {
                window.model().switchProjector();
                window.view().show("practice");
            });
        }

        private static void put(BenchViewModel bench, Insertable what, double metres) {
            bench.trace().axis().moveCursorTo(metres);
            bench.events().insert(what);
        }

        /** Last, since Monocle can't draw a window larger again. */
        private void shrink(DesktopWindow window, Stage stage, Path folder) {
            steps.add(() -> {
                window.practice().select(5);
                size(stage, SMALL_WIDTH_PIXELS, SMALL_HEIGHT_PIXELS);
            });
            picture("small", stage, folder);
        }

        private void ask(DesktopWindow window, Stage stage, Path folder) {
            steps.add(() -> window.practice().select(7));
            picture("question", stage, folder);
        }

        private static void size(Stage stage, double width, double height) {
            stage.setWidth(width);
            stage.setHeight(height);
        }

        private void picture(String name, Stage stage, Path folder) {
            steps.add(() -> save(stage, folder.resolve(name + ".png")));
        }

        /** Does the next step once the one before has come to rest. */
        private void next() {
            if (steps.isEmpty()) {
                Platform.exit();
                return;
            }
            steps.remove().run();
            PauseTransition pause = new PauseTransition(SETTLE);
            pause.setOnFinished(event -> next());
            pause.play();
        }

        private static void save(Stage stage, Path file) {
            try {
                Files.createDirectories(file.toAbsolutePath().getParent());
                ImageIO.write(SwingFXUtils.fromFXImage(stage.getScene().snapshot(null), null), "png", file.toFile());
            } catch (IOException e) {
                throw new UncheckedIOException("can't write " + file + "; choose a folder that can be written", e);
            }
        }
    }
}
