// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.ui.words.LengthUnit;
import java.util.Optional;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import javafx.collections.ObservableList;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Remembers the window from one run to the next. A place that no screen shows any more is not used. */
final class WindowMemory {

    private static final double LEAST_WIDTH = 640;
    private static final double LEAST_HEIGHT = 480;
    private static final double MOST = 20_000;
    private static final double GRIP = 60;

    private final Optional<Preferences> store;

    private WindowMemory(Optional<Preferences> store) {
        this.store = store;
    }

    static WindowMemory ofThisUser() {
        try {
            Preferences node = Preferences.userRoot().node("cablewright/window");
            node.sync();
            return new WindowMemory(Optional.of(node));
        } catch (BackingStoreException | SecurityException | IllegalStateException e) {
            // A home folder that can't be written only means that the window opens as it did the first time.
            return none();
        }
    }

    static WindowMemory in(Preferences node) {
        return new WindowMemory(Optional.of(node));
    }

    static WindowMemory none() {
        return new WindowMemory(Optional.empty());
    }

    void restore(Stage stage, WindowViewModel model) {
        store.ifPresent(node -> {
            model.darkProperty().set(node.getBoolean("dark", false));
            model.projectorProperty().set(node.getBoolean("projector", false));
            model.unitProperty().set(node.getBoolean("feet", false) ? LengthUnit.FEET : LengthUnit.METRES);
            model.traineeProperty()
                    .set(node.get("trainee", model.traineeProperty().get()));
            restorePlace(stage, node);
            stage.setMaximized(node.getBoolean("maximised", false));
        });
    }

    private static void restorePlace(Stage stage, Preferences node) {
        double width = node.getDouble("width", Double.NaN);
        double height = node.getDouble("height", Double.NaN);
        if (width >= LEAST_WIDTH && width <= MOST && height >= LEAST_HEIGHT && height <= MOST) {
            stage.setWidth(width);
            stage.setHeight(height);
        }
        double x = node.getDouble("x", Double.NaN);
        double y = node.getDouble("y", Double.NaN);
        boolean finite = Math.abs(x) <= MOST && Math.abs(y) <= MOST;
        if (finite && isOnAScreen(x, y)) {
            stage.setX(x);
            stage.setY(y);
        }
    }

    private static boolean isOnAScreen(double x, double y) {
        ObservableList<Screen> under = Screen.getScreensForRectangle(new Rectangle2D(x, Math.max(0, y), GRIP, GRIP));
        return !under.isEmpty();
    }

    void keep(Stage stage, WindowViewModel model) {
        store.ifPresent(node -> {
            node.putBoolean("dark", model.darkProperty().get());
            node.putBoolean("projector", model.projectorProperty().get());
            node.putBoolean("feet", model.unitProperty().get() == LengthUnit.FEET);
            node.put("trainee", model.traineeProperty().get());
            node.putBoolean("maximised", stage.isMaximized());
            if (!stage.isMaximized()) {
                node.putDouble("x", stage.getX());
                node.putDouble("y", stage.getY());
                node.putDouble("width", stage.getWidth());
                node.putDouble("height", stage.getHeight());
            }
            try {
                node.flush();
            } catch (BackingStoreException e) {
                // Nothing is lost but the place of the window.
                return;
            }
        });
    }
}
