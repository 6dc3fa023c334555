// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.desktop.practice.model.Setting;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.strip.FoldingStrip;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * The settings of the instrument and what helps to read, in one row; what the exercise fixes is written, what it leaves free
 * can be changed, and what does not fit folds into a menu.
 */
public final class SettingsShelf extends StackPane {

    private static final Duration PATIENCE = Duration.millis(400);

    private final SettingsViewModel settings;
    private final AxisViewModel axis;
    private final ReadOnlyBooleanProperty working;
    private final ReadOnlyStringProperty problem;
    private final Texts texts;
    private final Words words;
    private final FoldingStrip row;
    private final ReadingTools tools;
    private final ObservableValue<Boolean> step;
    private final BooleanProperty isLate = new SimpleBooleanProperty();
    private final BooleanBinding hasMessage;

    /**
     * Lays the shelf out.
     *
     * @param settings what can be set
     * @param axis the axis, which knows the unit of lengths
     * @param working whether a trace is being taken
     * @param problem why none could be, or nothing
     * @param tools what helps to read, at the end of the row
     * @param texts texts of the desktop
     * @param words names of ends and quantities
     */
    public SettingsShelf(
            SettingsViewModel settings,
            AxisViewModel axis,
            ReadOnlyBooleanProperty working,
            ReadOnlyStringProperty problem,
            ReadingTools tools,
            Texts texts,
            Words words) {
        this.settings = settings;
        this.axis = axis;
        this.working = working;
        this.problem = problem;
        this.tools = tools;
        this.texts = texts;
        this.words = words;
        this.row = new FoldingStrip(Orientation.HORIZONTAL, Pos.CENTER_LEFT, texts.say("shelf.more"));
        this.step = settings.stimulusProperty().map(Stimulus::isStep);
        hasMessage = isLate.or(problem.isNotEmpty());
        getStyleClass().addAll("card", "shelf");
        setId("shelf");
        row.more().setId("shelf-more");
        addSettings();
        getChildren().add(row);
        axis.unitProperty().addListener((o, before, now) -> rebuild());
        settings.permittedProperty().addListener((o, before, now) -> rebuild());
        settings.stimulusProperty().addListener((o, before, now) -> {
            if (before.isStep() != now.isStep()) {
                rebuild();
            }
        });
    }

    private void rebuild() {
        row.clear();
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
        tools.addTo(row);
    }

    /**
     * Lays over a trace what comes and goes: messages at its top, and the known length at its foot.
     *
     * @param card the card that holds the trace
     * @param length the known length
     */
    public void layOver(StackPane card, KnownLength length) {
        Node said = messages();
        StackPane.setAlignment(said, Pos.TOP_CENTER);
        StackPane.setAlignment(length, Pos.BOTTOM_RIGHT);
        card.getChildren().addAll(said, length);
    }

    /**
     * Makes the line that says why there is no trace, or that one is still being taken. It is laid over the trace, so that
     * nothing moves when it comes and goes.
     *
     * @return the line, without size while there is nothing to say
     */
    private Node messages() {
        VBox messages = new VBox(working(), problem());
        messages.getStyleClass().add("over-trace");
        messages.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        messages.setMouseTransparent(true);
        messages.visibleProperty().bind(hasMessage);
        return messages;
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
            String only = text.apply(values.get(0));
            add(setting, fixed(only), () -> List.of(folded(setting, only)));
            return;
        }
        MenuButton button = new MenuButton();
        button.setId("setting-" + setting.name().toLowerCase(Locale.ROOT));
        button.getStyleClass().addAll("flat", "setting-choice");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(new Tooltip(texts.say("setting.tip", name(setting), setting.key())));
        button.getItems().setAll(items(values, now, set, text));
        Runnable show = () -> {
            button.setText(text.apply(now.getValue()));
            button.setAccessibleText(
                    texts.say("setting.accessible", name(setting), text.apply(now.getValue()), setting.key()));
            button.getItems().forEach(item -> ((RadioMenuItem) item)
                    .setSelected(item.getUserData().equals(now.getValue())));
        };
        show.run();
        now.addListener((o, before, after) -> show.run());
        add(setting, button, () -> {
            Menu menu = new Menu(texts.say("setting.folded", name(setting), text.apply(now.getValue())));
            menu.getItems().setAll(items(values, now, set, text));
            return List.of(menu);
        });
    }

    private static <T> List<MenuItem> items(
            List<T> values, ObservableValue<T> now, Consumer<T> set, Function<T, String> text) {
        ToggleGroup group = new ToggleGroup();
        List<MenuItem> items = new ArrayList<>();
        for (T value : values) {
            RadioMenuItem item = new RadioMenuItem(text.apply(value));
            item.setToggleGroup(group);
            item.setUserData(value);
            item.setSelected(value.equals(now.getValue()));
            item.setOnAction(event -> set.accept(value));
            items.add(item);
        }
        return items;
    }

    /** What a fixed setting says while it is folded away. */
    private MenuItem folded(Setting setting, String value) {
        MenuItem folded = new MenuItem(texts.say("setting.folded", name(setting), value));
        folded.setDisable(true);
        return folded;
    }

    private void velocity() {
        double least = settings.permitted().velocity().leastFraction();
        double most = settings.permitted().velocity().mostFraction();
        Label value = fixed(Quantities.number(settings.velocityProperty().get(), 3));
        settings.velocityProperty()
                .addListener((o, before, now) -> value.setText(Quantities.number(now.doubleValue(), 3)));
        if (settings.permitted().velocity().isFixed()) {
            add(Setting.VELOCITY, value, () -> List.of(folded(Setting.VELOCITY, value.getText())));
            return;
        }
        Slider slider = new Slider(least, most, settings.velocityProperty().get());
        slider.setId("setting-velocity");
        slider.setBlockIncrement(SettingsViewModel.VELOCITY_STEP);
        slider.setAccessibleText(
                texts.say("setting.accessible", name(Setting.VELOCITY), value.getText(), Setting.VELOCITY.key()));
        slider.setTooltip(new Tooltip(texts.say("setting.tip", name(Setting.VELOCITY), Setting.VELOCITY.key())));
        // A value that was set elsewhere is finer than the slider's own steps, and stays as it was set.
        slider.valueProperty().addListener((o, before, now) -> {
            if (now.doubleValue() != settings.velocityProperty().get()) {
                settings.setVelocity(now.doubleValue());
            }
        });
        settings.velocityProperty().addListener((o, before, now) -> slider.setValue(now.doubleValue()));
        HBox both = new HBox(slider, value);
        both.setAlignment(Pos.CENTER_LEFT);
        both.getStyleClass().add("velocity");
        add(Setting.VELOCITY, both, () -> List.of(velocityStep(1, value), velocityStep(-1, value)));
    }

    private MenuItem velocityStep(int direction, Label value) {
        MenuItem step = new MenuItem(
                texts.say(direction > 0 ? "setting.velocity.more" : "setting.velocity.less", value.getText()));
        step.setOnAction(event -> settings.step(Setting.VELOCITY, direction));
        return step;
    }

    private static Label fixed(String text) {
        Label value = new Label(text);
        value.getStyleClass().add("setting-value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        return value;
    }

    /** A fixed setting is text, a free one a control; its key is in its tooltip. */
    private void add(Setting setting, Node control, Supplier<List<MenuItem>> folded) {
        Label caption = new Label(name(setting));
        caption.getStyleClass().add("setting-name");
        caption.setMinWidth(Region.USE_PREF_SIZE);
        HBox pair = new HBox(caption, control);
        pair.getStyleClass().add("setting");
        pair.setAlignment(Pos.CENTER_LEFT);
        row.add(pair, folded);
    }

    /** Says that a trace is being taken, if it takes so long that a person would wonder. */
    private Label working() {
        Label message = new Label(texts.say("shelf.working"));
        message.getStyleClass().add("quiet");
        PauseTransition patience = new PauseTransition(PATIENCE);
        patience.setOnFinished(event -> isLate.set(working.get()));
        working.addListener((o, before, now) -> {
            if (now) {
                patience.playFromStart();
            } else {
                patience.stop();
                isLate.set(false);
            }
        });
        return shownWhile(message, isLate);
    }

    private Label problem() {
        Label message = new Label();
        message.setId("problem");
        message.getStyleClass().add("problem");
        message.setWrapText(true);
        message.textProperty().bind(problem);
        return shownWhile(message, problem.isNotEmpty());
    }

    private static Label shownWhile(Label message, ObservableValue<Boolean> when) {
        message.visibleProperty().bind(when);
        message.managedProperty().bind(when);
        return message;
    }
}
