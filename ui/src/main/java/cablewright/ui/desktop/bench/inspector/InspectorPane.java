// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Event;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The inspector: the cable while nothing is selected, otherwise the selected event, or what can be done to several. */
public final class InspectorPane extends StackPane {

    private final BenchViewModel model;
    private final Texts texts;
    private final CablePane cable;
    private final EventPane event;
    private final VBox eventPage;
    private final VBox several = new VBox();
    private final Label count = new Label();

    public InspectorPane(BenchViewModel model) {
        this.model = model;
        this.texts = model.texts();
        setId("inspector");
        cable = new CablePane(model);
        event = new EventPane(model);
        eventPage = new VBox(back("to-cable"), event, deeds("event"));
        eventPage.getStyleClass().add("inspector-page");
        count.getStyleClass().add("card-title");
        several.getChildren().addAll(back("several-to-cable"), count, deeds("several"));
        several.getStyleClass().add("inspector-page");
        model.events().selectedProperty().addListener(changed -> show());
        model.document().documentProperty().addListener(changed -> show());
        model.trace().axis().unitProperty().addListener(changed -> show());
        show();
    }

    private Button back(String id) {
        Button back = button(id, "inspector.back", () -> model.events().selectNone());
        back.getStyleClass().add("flat");
        return back;
    }

    private HBox deeds(String of) {
        HBox deeds = new HBox(
                button(of + "-copy", "inspector.copy", model.events()::copy),
                button(of + "-duplicate", "inspector.duplicate", model.events()::duplicate),
                button(of + "-remove", "inspector.remove", model.events()::remove));
        deeds.getStyleClass().add("deeds");
        return deeds;
    }

    private Button button(String id, String key, Runnable action) {
        Button button = new Button(texts.say(key));
        button.setId(id);
        button.setAccessibleText(texts.say(key));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.getStyleClass().add("small-button");
        button.setOnAction(event -> action.run());
        return button;
    }

    private void show() {
        Optional<Event> one = model.events().one();
        if (one.isPresent()) {
            event.show(one.get());
            page(eventPage);
        } else if (model.events().selected().isEmpty()) {
            cable.show();
            page(cable);
        } else {
            count.setText(
                    texts.say("inspector.several", model.events().selected().size()));
            page(several);
        }
    }

    private void page(Region page) {
        if (!getChildren().contains(page)) {
            getChildren().setAll(page);
        }
    }

    /** Puts the focus on the first thing that can be changed. */
    public void enter() {
        if (model.events().one().isPresent()) {
            event.enter();
        } else {
            cable.enter();
        }
    }

    public void enterName() {
        if (model.events().one().isPresent()) {
            event.enterName();
        } else {
            cable.enterTitle();
        }
    }
}
