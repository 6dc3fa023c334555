package cablewright.ui.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class DesktopTest {
    private static final long WAIT_MILLISECONDS = 60_000;

    private Stage stage;

    @Start
    void start(Stage primaryStage) {
        stage = primaryStage;
        new Desktop().start(primaryStage);
    }

    @Test
    void theWindowOpensAndIsDrawnWithoutADisplay() {
        assertTrue(stage.isShowing());
        assertEquals("Cablewright", stage.getTitle());

        WritableImage picture = WaitForAsyncUtils.waitForAsyncFx(
                WAIT_MILLISECONDS, () -> stage.getScene().snapshot(null));
        assertTrue(coloursIn(picture).size() > 2, "text is drawn in more than a flat colour");
    }

    private static Set<Integer> coloursIn(WritableImage picture) {
        PixelReader pixels = picture.getPixelReader();
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                colours.add(pixels.getArgb(x, y));
            }
        }
        return colours;
    }
}
