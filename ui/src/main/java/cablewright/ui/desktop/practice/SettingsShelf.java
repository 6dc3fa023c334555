// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.desktop.practice.model.Setting;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The settings of the instrument in one row; what the exercise fixes is written, what it leaves free can be changed. */
public final class SettingsShelf extends VBox {

    private static final Duration PATIENCE = Duration.millis(400);

    private final SettingsViewModel settings;
    private final AxisViewModel axis;
    private final ReadOnlyBooleanProperty working;
    private final ReadOnlyStringProperty problem;
    private final Texts texts;
    private final Words words;
    private final FlowPane row = new FlowPane();
    private final ObservableValue<Boolean> step;

    /**
     * Lays the shelf out.
     *
     * @param settings what can be set
     * @param axis the axis, which knows the unit of lengths
     * @param working whether a trace is being taken
     * @param problem why none could be, or nothing
     * @param texts texts of the desktop
     * @param words names of ends and quantities
     */
    public SettingsShelf(
            SettingsViewModel settings,
            AxisViewModel axis,
            ReadOnlyBooleanProperty working,
            ReadOnlyStringProperty problem,
            Texts texts,
            Words words) {
        this.settings = settings;
        this.axis = axis;
        this.working = working;
        this.problem = problem;
        this.texts = texts;
        this.words = words;
        this.step = settings.stimulusProperty().map(Stimulus::isStep);
        getStyleClass().addAll("card", "shelf");
        setId("shelf");
        row.getStyleClass().add("shelf-row");
        addSettings();
        getChildren().addAll(row, working(), problem());
        axis.unitProperty().addListener((o, before, now) -> rebuild());
        settings.permittedProperty().addListener((o, before, now) -> rebuild());
        settings.stimulusProperty().addListener((o, before, now) -> {
            if (before.isStep() != now.isStep()) {
                rebuild();
            }
        });
    }

    private void rebuild() {
        row.getChildren().clear();
        addSettings();
    }

    private Quantities quantities() {
        return words.with(axis.unitProperty().get()).quantities();
    }

    private void addSettings() {
        choice(
                Setting.END,
                settings.permitted().ends(),
                settings.endProperty(),
                settings.endProperty()::set,
                this::end);
        if (settings.hasBothShapes()) {
            choice(Setting.SHAPE, List.of(false, true), step, settings::setShape, this::shape);
        }
        choice(
                Setting.WIDTH,
                settings.widths(),
                settings.stimulusProperty(),
                settings.stimulusProperty()::set,
                this::width);
        velocity();
        choice(
                Setting.RANGE,
                settings.permitted().rangesMetres(),
                settings.rangeMetresProperty(),
                settings.rangeMetresProperty()::set,
                metres -> quantities().shortLength(metres));
        choice(
                Setting.GAIN,
                settings.permitted().gainsDecibels(),
                settings.gainDecibelsProperty(),
                settings.gainDecibelsProperty()::set,
                gain -> Quantities.significant(gain) + " dB");
        choice(
                Setting.AVERAGES,
                settings.permitted().averages(),
                settings.averagesProperty(),
                settings.averagesProperty()::set,
                String::valueOf);
    }

    private String end(LineEnd end) {
        return words.end(end);
    }

    private String shape(boolean step) {
        return texts.say(step ? "shape.step" : "shape.pulse");
    }

    private String width(Stimulus stimulus) {
        return quantities().time(stimulus.resolutionSeconds());
    }

    private String name(Setting setting) {
        boolean rise =
                setting == Setting.WIDTH && settings.stimulusProperty().get().isStep();
        return texts.say(rise ? "setting.rise" : "setting." + setting.name().toLowerCase(Locale.ROOT));
    }

    private <T> void choice(
            Setting setting, List<T> values, ObservableValue<T> now, Consumer<T> set, Function<T, String> text) {
        if (values.size() < 2) {
            add(setting, fixed(text.apply(values.get(0))), false);
            return;
        }
        MenuButton button = new MenuButton();
        button.setId("setting-" + setting.name().toLowerCase(Locale.ROOT));
        button.getStyleClass().addAll("flat", "setting-choice");
        button.setTooltip(new Tooltip(texts.say("setting.tip", setting.key())));
        ToggleGroup group = new ToggleGroup();
        for (T value : values) {
            RadioMenuItem item = new RadioMenuItem(text.apply(value));
            item.setToggleGroup(group);
            item.setUserData(value);
            item.setOnAction(event -> set.accept(value));
            button.getItems().add(item);
        }
        Runnable show = () -> {
            button.setText(text.apply(now.getValue()));
            button.setAccessibleText(
                    texts.say("setting.accessible", name(setting), text.apply(now.getValue()), setting.key()));
            group.getToggles()
                    .forEach(item -> item.setSelected(item.getUserData().equals(now.getValue())));
        };
        show.run();
        now.addListener((o, before, after) -> show.run());
        add(setting, button, true);
    }

    private void velocity() {
        double least = settings.permitted().velocity().leastFraction();
        double most = settings.permitted().velocity().mostFraction();
        Label value = fixed(Quantities.number(settings.velocityProperty().get(), 3));
        settings.velocityProperty()
                .addListener((o, before, now) -> value.setText(Quantities.number(now.doubleValue(), 3)));
        if (settings.permitted().velocity().isFixed()) {
            add(Setting.VELOCITY, value, false);
            return;
        }
        Slider slider = new Slider(least, most, settings.velocityProperty().get());
        slider.setId("setting-velocity");
        slider.setBlockIncrement(SettingsViewModel.VELOCITY_STEP);
        slider.setAccessibleText(
                texts.say("setting.accessible", name(Setting.VELOCITY), value.getText(), Setting.VELOCITY.key()));
        slider.setTooltip(new Tooltip(texts.say("setting.tip", Setting.VELOCITY.key())));
        slider.valueProperty().addListener((o, before, now) -> settings.setVelocity(now.doubleValue()));
        settings.velocityProperty().addListener((o, before, now) -> slider.setValue(now.doubleValue()));
        HBox both = new HBox(slider, value);
        both.setAlignment(Pos.CENTER_LEFT);
        both.getStyleClass().add("velocity");
        add(Setting.VELOCITY, both, true);
    }

    private static Label fixed(String text) {
        Label value = new Label(text);
        value.getStyleClass().add("setting-value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        return value;
    }

    /** A fixed setting is text, a free one a control with its key beside it. */
    private void add(Setting setting, Node control, boolean free) {
        Label caption = new Label(name(setting));
        caption.getStyleClass().add("setting-name");
        caption.setMinWidth(Region.USE_PREF_SIZE);
        HBox pair = new HBox(caption, control);
        pair.getStyleClass().add("setting");
        pair.setAlignment(Pos.CENTER_LEFT);
        if (free) {
            Label key = new Label(setting.key());
            key.getStyleClass().add("key");
            key.setMinWidth(Region.USE_PREF_SIZE);
            pair.getChildren().add(key);
        }
        row.getChildren().add(pair);
    }

    /** Says that a trace is being taken, if it takes so long that a person would wonder. */
    private Label working() {
        Label message = new Label(texts.say("shelf.working"));
        message.getStyleClass().add("quiet");
        message.setVisible(false);
        message.setManaged(false);
        PauseTransition patience = new PauseTransition(PATIENCE);
        patience.setOnFinished(event -> {
            message.setVisible(working.get());
            message.setManaged(message.isVisible());
        });
        working.addListener((o, before, now) -> {
            if (now) {
                patience.playFromStart();
            } else {
                patience.stop();
                message.setVisible(false);
                message.setManaged(false);
            }
        });
        return message;
    }

    private Label problem() {
        Label message = new Label();
        message.setId("problem");
        message.getStyleClass().add("problem");
        message.setWrapText(true);
        message.textProperty().bind(problem);
        message.visibleProperty().bind(problem.isNotEmpty());
        message.managedProperty().bind(message.visibleProperty());
        return message;
    }
}
