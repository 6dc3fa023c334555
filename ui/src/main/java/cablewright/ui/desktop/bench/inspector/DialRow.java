// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.text.Texts;
import cablewright.ui.words.LengthUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * A dial on the screen: name, number field with unit, slider. What is typed is looked at as it is typed; what can't be is
 * said at the field, with the limit, and changes nothing.
 */
final class DialRow extends VBox {

    private static final PseudoClass FAULTY = PseudoClass.getPseudoClass("faulty");
    private static final double STEP = 0.02;

    /** What becomes of a turned dial. */
    interface Turning {

        /** Takes another value; while the hand is on it all values are one step. Returns what is wrong with it. */
        Optional<String> turn(OptionalDouble value);

        /** The hand is off. */
        void done();
    }

    private final Texts texts;
    private final Supplier<LengthUnit> unit;
    private final Turning turning;
    private final String name;
    private final TextField field = new TextField();
    private final Label symbol = new Label();
    private final Slider slider = new Slider(0, 1, 0);
    private final Label fault = new Label();
    private final Optional<CheckBox> absent;
    private Dial dial;
    private OptionalDouble beforeTyping = OptionalDouble.empty();
    private boolean isShowing;

    DialRow(Dial first, String name, Texts texts, Supplier<LengthUnit> unit, Turning turning) {
        this.texts = texts;
        this.unit = unit;
        this.turning = turning;
        this.name = name;
        this.absent =
                first.mayBeAbsent() ? Optional.of(new CheckBox(texts.say("absent." + first.key()))) : Optional.empty();
        getStyleClass().add("dial");
        setId("dial-" + first.key());
        build(first.key());
        show(first);
    }

    private void build(String key) {
        Label caption = new Label(name);
        caption.setLabelFor(field);
        caption.setWrapText(true);
        HBox.setHgrow(caption, Priority.ALWAYS);
        caption.setMaxWidth(Double.MAX_VALUE);
        field.setId("field-" + key);
        field.getStyleClass().add("dial-field");
        field.setMinWidth(Region.USE_PREF_SIZE);
        symbol.getStyleClass().add("dial-unit");
        symbol.setMinWidth(Region.USE_PREF_SIZE);
        slider.setId("slider-" + key);
        slider.setBlockIncrement(STEP);
        slider.setMaxWidth(Double.MAX_VALUE);
        fault.setId("fault-" + key);
        fault.getStyleClass().add("fault");
        fault.setWrapText(true);
        fault.setMinHeight(Region.USE_PREF_SIZE);
        HBox head = new HBox(caption);
        head.getStyleClass().add("dial-head");
        head.setAlignment(Pos.CENTER_LEFT);
        absent.ifPresent(box -> {
            box.setId("absent-" + key);
            box.setMinWidth(Region.USE_PREF_SIZE);
            box.setAccessibleText(texts.say("dial.absent", name, box.getText()));
            box.setOnAction(event -> leaveOut(box.isSelected()));
            head.getChildren().add(box);
        });
        head.getChildren().addAll(field, symbol);
        getChildren().addAll(head, slider, fault);
        field.textProperty().addListener((o, before, now) -> typed(now));
        field.focusedProperty().addListener((o, before, now) -> leave(now));
        slider.valueProperty().addListener((o, before, now) -> slid(now.doubleValue()));
        slider.valueChangingProperty().addListener((o, before, now) -> leave(now));
        slider.focusedProperty().addListener((o, before, now) -> leave(now));
        field.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                leave(false);
                event.consume();
            } else if (event.getCode() == KeyCode.ESCAPE) {
                show(dial, true);
                event.consume();
            }
        });
        say("");
    }

    /** Shows what the dial is set to now; what is being typed stays as it is typed. */
    void show(Dial now) {
        if (!field.isFocused()) {
            beforeTyping = now.value();
        }
        show(now, false);
    }

    private void show(Dial now, boolean alsoTyped) {
        dial = now;
        isShowing = true;
        DialUnit shownIn = DialUnit.of(dial, unit.get());
        boolean given = dial.value().isPresent();
        symbol.setText(shownIn.symbol());
        field.setDisable(!given);
        slider.setDisable(!given);
        absent.ifPresent(box -> box.setSelected(!given));
        if (!field.isFocused() || alsoTyped) {
            field.setText(given ? shownIn.number(dial.value().getAsDouble()) : "");
            say("");
        }
        if (given && !slider.isValueChanging()) {
            slider.setValue(dial.travel().placeOf(dial.value().getAsDouble()));
        }
        field.setAccessibleText(texts.say("dial.field", name, shownIn.symbol()));
        slider.setAccessibleText(
                texts.say("dial.slider", name, given ? shownIn.text(dial.value().getAsDouble()) : ""));
        isShowing = false;
    }

    private void typed(String text) {
        if (isShowing) {
            return;
        }
        DialUnit typedIn = DialUnit.of(dial, unit.get());
        double value;
        try {
            value = typedIn.parse(text, dial, texts);
        } catch (IllegalArgumentException e) {
            say(e.getMessage());
            return;
        }
        if (!dial.allowed().contains(value)) {
            refuse(limits(typedIn));
            return;
        }
        turn(OptionalDouble.of(value)).ifPresent(this::refuse);
    }

    /** What is refused takes back also its beginning, which was taken while it was typed. */
    private void refuse(String sentence) {
        if (!beforeTyping.equals(dial.value())) {
            turning.turn(beforeTyping);
        }
        say(sentence);
    }

    private String limits(DialUnit in) {
        return texts.say(
                dial.allowed().leastIsAllowed() ? "fault.between" : "fault.above",
                in.text(dial.allowed().least()),
                in.text(dial.allowed().most()));
    }

    private void slid(double place) {
        if (isShowing) {
            return;
        }
        double value = dial.at(place);
        turn(OptionalDouble.of(value));
        isShowing = true;
        field.setText(DialUnit.of(dial, unit.get()).number(dial.value().orElse(value)));
        isShowing = false;
    }

    private Optional<String> turn(OptionalDouble value) {
        Optional<String> wrong = turning.turn(value);
        say(wrong.orElse(""));
        return wrong;
    }

    private void leaveOut(boolean left) {
        turn(left ? OptionalDouble.empty() : OptionalDouble.of(dial.at(0.5)));
        turning.done();
    }

    /** Once the hand is off, what was typed in vain makes room for what holds. */
    private void leave(boolean stays) {
        beforeTyping = dial.value();
        if (!stays) {
            turning.done();
            show(dial, !field.isFocused());
        }
    }

    private void say(String sentence) {
        fault.setText(sentence);
        fault.setVisible(!sentence.isEmpty());
        fault.setManaged(!sentence.isEmpty());
        field.pseudoClassStateChanged(FAULTY, !sentence.isEmpty());
        field.setAccessibleHelp(sentence);
    }

    TextField field() {
        return field;
    }
}
