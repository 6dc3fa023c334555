// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.text.Texts;
import cablewright.simulator.reading.VelocityFinding;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.desktop.track.ReadingAids;
import cablewright.ui.words.Quantities;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/**
 * The velocity from a known length between the two cursors. It lies over the trace while there are two and the velocity is
 * free, so that nothing moves when it comes and goes.
 */
public final class KnownLength extends HBox {

    private final ReadingAids aids;
    private final SettingsViewModel settings;
    private final AxisViewModel axis;
    private final Texts texts;
    private final TextField length = new TextField();
    private final Button setVelocity;
    private final Label result = new Label();

    /**
     * Lays it out.
     *
     * @param aids what helps
     * @param settings where the velocity is set
     * @param axis the axis, which knows the unit and the cursor
     * @param texts texts of the desktop
     */
    public KnownLength(ReadingAids aids, SettingsViewModel settings, AxisViewModel axis, Texts texts) {
        this.aids = aids;
        this.settings = settings;
        this.axis = axis;
        this.texts = texts;
        getStyleClass().addAll("over-trace", "known-length");
        setAlignment(Pos.CENTER_LEFT);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        setId("reading-bar");
        setVelocity = button(
                texts.say("aids.setVelocity"), texts.say("aids.setVelocity.name"), "set-velocity", this::setVelocity);
        length.setId("known-length");
        length.setPrefColumnCount(5);
        length.setOnAction(event -> setVelocity());
        getChildren().addAll(length, setVelocity, result);
        aids.secondMetresProperty().addListener((o, before, now) -> show());
        axis.unitProperty().addListener((o, before, now) -> show());
        show();
    }

    private static Button button(String text, String name, String id, Runnable action) {
        Button button = new Button(text);
        button.setId(id);
        button.getStyleClass().addAll("small-button");
        button.setAccessibleText(name);
        button.setTooltip(new Tooltip(name));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    private void show() {
        boolean two = aids.secondMetresProperty().get().isPresent();
        boolean free = two && !settings.permitted().velocity().isFixed();
        setVisible(free);
        setManaged(free);
        String unit = axis.unitProperty().get().symbol();
        length.setPromptText(texts.say("aids.length", unit));
        length.setAccessibleText(texts.say("aids.length.name", unit));
    }

    private void setVelocity() {
        Optional<VelocityFinding> found = typed().flatMap(aids::velocity);
        if (found.isEmpty()) {
            result.setText(texts.say("aids.badLength"));
            return;
        }
        VelocityFinding velocity = found.get();
        double least = settings.permitted().velocity().leastFraction();
        double most = settings.permitted().velocity().mostFraction();
        if (velocity.fraction() < least || velocity.fraction() > most) {
            result.setText(texts.say(
                    "aids.velocityOut",
                    Quantities.number(velocity.fraction(), 3),
                    Quantities.number(least, 3),
                    Quantities.number(most, 3)));
            return;
        }
        double before = settings.velocityProperty().get();
        settings.setVelocity(velocity.fraction());
        double scale = settings.velocityProperty().get() / before;
        aids.secondMetresProperty().get().ifPresent(metres -> aids.secondMetresProperty()
                .set(OptionalDouble.of(metres * scale)));
        axis.moveCursorTo(axis.cursorMetresProperty().get() * scale);
        result.setText(texts.say(
                "aids.velocitySet",
                Quantities.number(velocity.fraction(), 4),
                Quantities.number(velocity.uncertainty(), 4)));
    }

    private Optional<Double> typed() {
        try {
            double value = Double.parseDouble(
                    length.getText().strip().toLowerCase(Locale.ROOT).replace(',', '.'));
            return value > 0 && Double.isFinite(value)
                    ? Optional.of(axis.unitProperty().get().toMetres(value))
                    : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
