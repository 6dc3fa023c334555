package cablewright.ui.desktop;

import atlantafx.base.theme.PrimerLight;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The desktop program: opens the window in which people work. */
public final class Desktop extends Application {
    private static final double WIDTH_PIXELS = 1280;
    private static final double HEIGHT_PIXELS = 800;

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

    @Override
    public void start(Stage stage) {
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        stage.setTitle("Cablewright");
        stage.setScene(new Scene(new StackPane(new Label("Cablewright")), WIDTH_PIXELS, HEIGHT_PIXELS));
        stage.show();
    }
}
