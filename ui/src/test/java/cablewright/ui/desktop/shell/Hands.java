// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.drawing.axis.DistanceView;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;

/** Keys and pointer of a person, as the window system brings them. */
final class Hands {

    private static final long WAIT_MILLISECONDS = 60_000;

    private static final int PULSES = 2;

    private final Stage stage;
    private Robot robot;

    Hands(Stage stage) {
        this.stage = stage;
    }

    private <T> T ask(Callable<T> question) {
        return WaitForAsyncUtils.waitForAsyncFx(WAIT_MILLISECONDS, question);
    }

    void run(Runnable action) {
        ask(() -> {
            action.run();
            return null;
        });
        settle();
    }

    /** Lets what the action set off come through: two layouts, as a person sees them before doing more. */
    private void settle() {
        CountDownLatch pulses = new CountDownLatch(PULSES);
        Runnable listener = pulses::countDown;
        ask(() -> {
            stage.getScene().addPostLayoutPulseListener(listener);
            return true;
        });
        try {
            for (int i = 0; i < PULSES; i++) {
                ask(() -> {
                    Platform.requestNextPulse();
                    return true;
                });
                pulses.await(1, TimeUnit.SECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        ask(() -> {
            stage.getScene().removePostLayoutPulseListener(listener);
            return true;
        });
    }

    private Robot robot() {
        if (robot == null) {
            robot = ask(Robot::new);
        }
        return robot;
    }

    /** Types a key while others are held. */
    void type(KeyCode key, KeyCode... held) {
        Robot fingers = robot();
        run(() -> {
            for (KeyCode one : held) {
                fingers.keyPress(one);
            }
            fingers.keyType(key);
            for (KeyCode one : held) {
                fingers.keyRelease(one);
            }
        });
    }

    Parent root() {
        return ask(() -> {
            stage.getScene().getRoot().applyCss();
            stage.getScene().getRoot().layout();
            return stage.getScene().getRoot();
        });
    }

    Node focused() {
        return ask(() -> stage.getScene().getFocusOwner());
    }

    Node find(String selector) {
        Node found = root().lookup(selector);
        if (found == null) {
            throw new AssertionError("nothing on the screen is " + selector);
        }
        return found;
    }

    WritableImage picture() {
        return ask(() -> stage.getScene().snapshot(null));
    }

    void click(Node node) {
        Point2D middle = ask(() -> {
            Bounds bounds = node.localToScreen(node.getBoundsInLocal());
            return new Point2D(bounds.getCenterX(), bounds.getCenterY());
        });
        run(() -> robot().mouseMove(middle));
        run(() -> robot().mouseClick(MouseButton.PRIMARY));
    }

    private Point2D onTrace(AxisViewModel axis, double metres, double down) {
        return onTrack("#trace-track", axis, metres, down);
    }

    private Point2D onTrack(String selector, AxisViewModel axis, double metres, double down) {
        return ask(() -> {
            Region track = (Region) stage.getScene().lookup(selector);
            DistanceView view = axis.viewProperty().get().on(62, track.getWidth() - 62 - 16);
            return track.localToScreen(view.pixel(metres), down);
        });
    }

    /** Clicks on the cable at a distance. */
    void clickOnCable(AxisViewModel axis, double metres) {
        Point2D place = onTrack("#cable-track", axis, metres, 96);
        run(() -> robot().mouseMove(place));
        run(() -> robot().mouseClick(MouseButton.PRIMARY));
    }

    /** Takes hold of an event on the cable and carries it to another distance. */
    void dragOnCable(AxisViewModel axis, double fromMetres, double toMetres) {
        drag(onTrack("#cable-track", axis, fromMetres, 96), onTrack("#cable-track", axis, toMetres, 96));
    }

    void doubleClickOnTrace(AxisViewModel axis, double metres) {
        Point2D place = onTrace(axis, metres, 100);
        run(() -> robot().mouseMove(place));
        run(() -> robot().mouseClick(MouseButton.PRIMARY));
        run(() -> robot().mouseClick(MouseButton.PRIMARY));
    }

    /** Takes hold of the pennant at one distance and carries it to another. */
    void dragOnTrace(AxisViewModel axis, double fromMetres, double toMetres) {
        Point2D from = onTrace(axis, fromMetres, 28);
        Point2D to = onTrace(axis, toMetres, 28);
        drag(from, to);
    }

    private void drag(Point2D from, Point2D to) {
        run(() -> robot().mouseMove(from));
        run(() -> robot().mousePress(MouseButton.PRIMARY));
        run(() -> robot().mouseMove(from.midpoint(to)));
        run(() -> robot().mouseMove(to));
        run(() -> robot().mouseRelease(MouseButton.PRIMARY));
    }
}
