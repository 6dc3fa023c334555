package cablewright.ui.desktop.bench;

import cablewright.ui.words.Texts;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** The bar of the Bench: undo and redo with the name of what they do. */
final class BenchBar extends HBox {

    private final Texts texts;

    BenchBar(BenchViewModel model) {
        this.texts = model.texts();
        getStyleClass().add("bench-bar");
        setAlignment(Pos.CENTER_LEFT);
        DocumentViewModel document = model.document();
        getChildren()
                .addAll(
                        history("undo", Feather.CORNER_UP_LEFT, document.undoNameProperty(), document::undo),
                        history("redo", Feather.CORNER_UP_RIGHT, document.redoNameProperty(), document::redo));
    }

    private Button history(String id, Feather icon, ObservableValue<Optional<String>> name, Runnable action) {
        Button button = new Button("", new FontIcon(icon));
        button.setId("bench-" + id);
        button.getStyleClass().addAll("flat", "small-button");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        Tooltip tip = new Tooltip();
        button.setTooltip(tip);
        Runnable show = () -> {
            Optional<String> what = name.getValue();
            button.setDisable(what.isEmpty());
            button.setText(what.orElse(""));
            String said = texts.say("bar." + id, what.orElse(""));
            button.setAccessibleText(said);
            tip.setText(said);
        };
        name.addListener((o, before, now) -> show.run());
        show.run();
        return button;
    }
}
