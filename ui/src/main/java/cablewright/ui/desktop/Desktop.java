package cablewright.ui.desktop;

import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The desktop program: opens the window in which people work. */
public final class Desktop extends Application {
    private static final double WIDTH_PIXELS = 1280;
    private static final double HEIGHT_PIXELS = 800;

    /** Makes the desktop; JavaFX calls this. */
    public Desktop() {}

    @Override
    public void start(Stage stage) {
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        stage.setTitle("Cablewright");
        stage.setScene(new Scene(new StackPane(new Label("Cablewright")), WIDTH_PIXELS, HEIGHT_PIXELS));
        stage.show();
    }
}
