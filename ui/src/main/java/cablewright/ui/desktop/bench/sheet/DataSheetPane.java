// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.sheet;

import cablewright.lessons.text.Texts;
import cablewright.simulator.line.CableFamily;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.EditorPane;
import cablewright.ui.desktop.bench.form.LocalField;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.desktop.choice.ChoiceLook;
import cablewright.ui.desktop.task.Threads;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A cable type of the user's own: what the maker's data sheet says, how well it can be met, and the run made of it. */
public final class DataSheetPane extends EditorPane {

    private static final NumberEntry OHMS = NumberEntry.between("Ω", 1, 1, 1000, 3);
    private static final NumberEntry VELOCITY = NumberEntry.between("", 1, 0.05, 1, 4);
    private static final NumberEntry LOOP = NumberEntry.between("Ω/km", 1e-3, 0, 100, 3);
    private static final NumberEntry DIAMETER = new NumberEntry("mm", 1e-3, 0, 0.3, false, 3);
    private static final int FIRST_POINTS = 3;

    private final Texts texts;
    private final DataSheetViewModel model;
    private final VBox points = new VBox();
    private final ComboBox<Integer> runs = new ComboBox<>();
    private int rowsMade;

    /**
     * Makes the pane.
     *
     * @param document the document on the Bench
     * @param threads where to work and where to show
     * @param texts the sentences of the editors
     */
    public DataSheetPane(DocumentViewModel document, Threads threads, Texts texts) {
        super("sheet-editor", texts.say("sheet.name"));
        this.texts = texts;
        this.model = new DataSheetViewModel(document, threads, texts);
        points.getStyleClass().add("item-rows");
        Label what = written(texts.say("sheet.what"));
        FlowPane numbers = new FlowPane(
                number("ohms", "75", OHMS, model::impedance).unit("Ω"),
                number("velocity", "0.85", VELOCITY, model::velocity),
                optional("loop", LOOP, model::loopResistance).unit("Ω/km"),
                optional("diameter", DIAMETER, model::insulation).unit("mm"));
        numbers.getStyleClass().add("field-flow");
        Button more = new Button(texts.say("sheet.point.add"));
        more.setId("sheet-point-add");
        more.setAccessibleText(texts.say("sheet.point.add"));
        more.setOnAction(event -> addPoint());
        add(
                what,
                new TypedField("sheet-title", texts.say("sheet.title"), title()),
                family(),
                numbers,
                unit(),
                points,
                more,
                message(),
                new FitView(model),
                laying());
        for (int i = 0; i < FIRST_POINTS; i++) {
            addPoint();
        }
    }

    private static Label written(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add("quiet");
        return label;
    }

    private LocalField title() {
        return new LocalField(texts.say("sheet.first"), typed -> {
            model.title(typed.strip());
            return typed.isBlank() ? Optional.of(texts.say("sheet.title.none")) : Optional.empty();
        });
    }

    /** A number that must be there: where it is not, there is no fit. */
    private TypedField number(String name, String first, NumberEntry entry, Consumer<OptionalDouble> set) {
        return new TypedField("sheet-" + name, texts.say("sheet." + name), field(first, entry, set)).narrow(7);
    }

    private LocalField field(String first, NumberEntry entry, Consumer<OptionalDouble> set) {
        return new LocalField(first, typed -> {
            Optional<String> wrong = entry.take(typed, texts, value -> {
                set.accept(OptionalDouble.of(value));
                return Optional.empty();
            });
            if (wrong.isPresent()) {
                set.accept(OptionalDouble.empty());
            }
            return first.isEmpty() && typed.isBlank() ? Optional.empty() : wrong;
        });
    }

    /** A number that the sheet may lack. */
    private TypedField optional(String name, NumberEntry entry, BiConsumer<OptionalDouble, Boolean> set) {
        LocalField field = new LocalField("", typed -> {
            Optional<String> wrong = typed.isBlank()
                    ? Optional.empty()
                    : entry.take(typed, texts, value -> {
                        set.accept(OptionalDouble.of(value), true);
                        return Optional.empty();
                    });
            if (typed.isBlank() || wrong.isPresent()) {
                set.accept(OptionalDouble.empty(), wrong.isEmpty());
            }
            return wrong;
        });
        return new TypedField("sheet-" + name, texts.say("sheet." + name), field)
                .narrow(7)
                .whenEmpty(texts.say("sheet.notGiven"));
    }

    private <T> VBox combo(ComboBox<T> box, String name, List<T> items, Function<T, String> written, Consumer<T> set) {
        box.setId("sheet-" + name);
        box.setAccessibleText(texts.say("sheet." + name));
        ChoiceLook.of(written).on(box);
        box.getItems().setAll(items);
        box.setValue(items.get(0));
        box.valueProperty().addListener((o, before, now) -> {
            if (now != null) {
                set.accept(now);
            }
        });
        Label label = new Label(texts.say("sheet." + name));
        label.getStyleClass().add("field-name");
        label.setLabelFor(box);
        VBox field = new VBox(label, box);
        field.getStyleClass().add("field");
        return field;
    }

    private VBox family() {
        return combo(
                new ComboBox<CableFamily>(),
                "family",
                Families.all(),
                it -> texts.say(
                        "sheet.family." + it.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                model::family);
    }

    /** How data sheets write attenuation: dB over a length in metres. */
    private VBox unit() {
        return combo(
                new ComboBox<Double>(),
                "unit",
                List.of(100.0, 1000.0, 30.48, 1.0),
                metres -> texts.say("sheet.unit." + Math.round(metres)),
                metres -> model.attenuationUnit(1 / metres));
    }

    private void addPoint() {
        DataSheetViewModel.Point point = model.addPoint();
        rowsMade++;
        points.getChildren().add(new PointRow(model, point, rowsMade, this::removePoint));
    }

    private void removePoint(PointRow row) {
        points.getChildren().remove(row);
        model.removePoint(row.point());
    }

    private Label message() {
        Label message = new Label();
        message.setId("sheet-message");
        message.setWrapText(true);
        message.setMinHeight(Region.USE_PREF_SIZE);
        message.textProperty().bind(model.messageProperty());
        message.managedProperty().bind(model.messageProperty().isNotEmpty());
        return message;
    }

    private HBox laying() {
        VBox which = combo(
                runs,
                "run",
                List.of(0),
                it -> texts.say(
                        "sheet.run.label",
                        it + 1,
                        it < model.document().now().cable().runs().size()
                                ? model.document()
                                        .now()
                                        .cable()
                                        .runs()
                                        .get(it)
                                        .type()
                                        .title()
                                : ""),
                chosen -> {});
        model.document().documentProperty().addListener((o, before, now) -> fillRuns());
        fillRuns();
        Button lay = new Button(texts.say("sheet.lay"));
        lay.setId("sheet-lay");
        lay.setAccessibleText(texts.say("sheet.lay.name"));
        lay.getStyleClass().add("accent");
        lay.setMinWidth(Region.USE_PREF_SIZE);
        lay.disableProperty().bind(model.fittedProperty().map(Optional::isEmpty));
        lay.setOnAction(event -> model.lay(runs.getValue()));
        HBox row = new HBox(which, lay);
        row.setAlignment(Pos.BOTTOM_LEFT);
        row.getStyleClass().add("item-head");
        return row;
    }

    private void fillRuns() {
        int count = model.document().now().cable().runs().size();
        int chosen = runs.getValue() == null ? 0 : Math.min(runs.getValue(), count - 1);
        runs.getItems().setAll(IntStream.range(0, count).boxed().toList());
        runs.setValue(chosen);
    }
}
