// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.task.Threads;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.util.Duration;

/**
 * Measures in the real window how long it takes from a step of a dragged event to the picture of its trace, on a cable of
 * 30 events: from the call that the pointer makes to the end of the pulse that drew the new trace. Steps follow each other
 * as a hand makes them, each a little after the picture of the one before.
 */
public final class DragTimes {

    private DragTimes() {}

    /**
     * Measures and ends.
     *
     * @param arguments the file to write the figures into
     */
    public static void main(String[] arguments) {
        if (arguments.length != 1) {
            throw new IllegalArgumentException("name the one file to write the figures into");
        }
        Application.launch(Dragger.class, arguments);
    }

    /** Drags, and takes the time. JavaFX makes and starts it. */
    public static final class Dragger extends Application {

        private static final int EVENTS = 30;
        private static final int WARM_UP = 100;
        private static final int STEPS = 400;
        private static final double METRES_OF_ONE = 0.05;
        private static final Duration BETWEEN = Duration.millis(16);
        private static final double NANOS_IN_MILLI = 1e6;

        private final List<Double> milliseconds = new ArrayList<>();
        private BenchViewModel bench;
        private Stage stage;
        private String dragged;
        private double from;
        private int step;
        private long begun;
        private boolean waits;

        /** Makes it; JavaFX calls this. */
        public Dragger() {}

        @Override
        public void start(Stage first) {
            stage = first;
            DesktopWindow window =
                    new DesktopWindow(stage, WindowMemory.none(), Threads.besideTheScreen("cablewright-work"));
            window.show(BuiltInLessons.find("harbour-line").orElseThrow());
            window.view().show(Pages.BENCH);
            bench = window.bench();
            bench.files().start(thirtyEvents());
            dragged = "pinch8";
            Event event = bench.document().now().cable().event(dragged).orElseThrow();
            from = event.startMetres();
            bench.trace().traceTrack().traceProperty().addListener(changed -> traceCame());
            stage.getScene().addPostLayoutPulseListener(this::drawn);
            later(Duration.seconds(3));
        }

        private static BenchDocument thirtyEvents() {
            return BenchTemplate.PLAIN_CABLE.document(Locale.ROOT).built(Dragger::crowded);
        }

        private static Cable crowded(Cable plain) {
            Cable cable = plain;
            List<Insertable> kinds = List.of(Insertable.SPLICE, Insertable.PINCH);
            for (int i = 0; i < EVENTS; i++) {
                double metres = (i + 1) * plain.lengthMetres() / (EVENTS + 1);
                cable = kinds.get(i % kinds.size()).putOn(cable, metres, METRES_OF_ONE);
            }
            return cable;
        }

        private void later(Duration pause) {
            PauseTransition wait = new PauseTransition(pause);
            wait.setOnFinished(event -> drag());
            wait.play();
        }

        private void drag() {
            if (step == WARM_UP + STEPS) {
                write();
                Platform.exit();
                return;
            }
            step++;
            begun = System.nanoTime();
            // To and fro, each time to a place where it has not been.
            double way = METRES_OF_ONE * (step % 2 == 0 ? step : -step) / 8;
            bench.events().drag(dragged, from + way);
        }

        private void traceCame() {
            waits = begun > 0;
        }

        private void drawn() {
            boolean isDrawn = waits && !bench.trace().workingProperty().get();
            if (isDrawn) {
                waits = false;
                if (step > WARM_UP) {
                    milliseconds.add((System.nanoTime() - begun) / NANOS_IN_MILLI);
                }
                later(BETWEEN);
            }
        }

        private void write() {
            milliseconds.sort(Double::compare);
            String text = String.format(
                    Locale.ROOT,
                    "cable of %d events, %d steps of a drag: median %.1f ms, 95th percentile %.1f ms, longest %.1f ms%n",
                    bench.document().now().cable().events().size(),
                    milliseconds.size(),
                    milliseconds.get(milliseconds.size() / 2),
                    milliseconds.get((int) (0.95 * milliseconds.size())),
                    milliseconds.get(milliseconds.size() - 1));
            try {
                Files.writeString(Path.of(getParameters().getUnnamed().get(0)), text);
            } catch (IOException e) {
                throw new UncheckedIOException("the figures can't be written; name a file that can be", e);
            }
        }
    }
}
