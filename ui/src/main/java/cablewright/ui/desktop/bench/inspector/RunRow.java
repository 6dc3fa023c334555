// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.bench.field.Measure;
import cablewright.lessons.bench.field.NumberField.Travel;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Run;
import cablewright.simulator.check.Range;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.CableViewModel;
import cablewright.ui.desktop.choice.ChoiceLook;
import cablewright.ui.words.Quantities;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One run in the inspector: its type, its length, and what the type is like. */
final class RunRow extends VBox {

    private final BenchViewModel model;
    private final Texts texts;
    private final int index;
    private final ChoiceRow<CableType> type;
    private final DialRow length;
    private final Label figures = new Label();
    private final Button remove;

    RunRow(BenchViewModel model, int index, Consumer<Optional<String>> say) {
        this.model = model;
        this.texts = model.texts();
        this.index = index;
        getStyleClass().add("run");
        CableViewModel cable = model.cable();
        type = new ChoiceRow<>(
                "run-" + index,
                texts.say("run.number", index + 1),
                new ChoiceLook<>(
                        CableType::title,
                        one -> Optional.of(texts.say("cableFamily." + word(one.family()))),
                        one -> Optional.empty()),
                chosen -> say.accept(cable.runType(index, chosen)));
        length = CablePane.dial(
                dial(50, 0),
                texts.say("field.runMetres"),
                texts,
                model.trace().axis().unitProperty()::get,
                metres -> cable.runLength(index, metres),
                cable::done);
        length.setId("run-length-" + index);
        figures.getStyleClass().add("quiet");
        figures.setWrapText(true);
        figures.setMinHeight(Region.USE_PREF_SIZE);
        Button add = button("run-add-" + index, "run.add", "run.add.name", () -> say.accept(cable.addRun(index)));
        remove = button(
                "run-remove-" + index, "run.remove", "run.remove.name", () -> say.accept(cable.removeRun(index)));
        HBox deeds = new HBox(add, remove);
        deeds.getStyleClass().add("deeds");
        getChildren().addAll(type, length, figures, deeds);
    }

    private static String word(CableFamily family) {
        return family.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Button button(String id, String key, String nameKey, Runnable action) {
        Button button = new Button(texts.say(key));
        button.setId(id);
        button.getStyleClass().addAll("flat", "small-button");
        button.setAccessibleText(texts.say(nameKey, index + 1));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** A run is at least as long as the events on the cable need. */
    private static Dial dial(double metres, double others) {
        double most = Cable.MOST_METRES - others;
        double to = metres <= 1000 ? 1000 : metres <= 10_000 ? 10_000 : Cable.MOST_METRES;
        return Dial.of("runMetres", Measure.LENGTH, metres, Range.above(0, most), Travel.byFactors(1, to));
    }

    void show(Cable cable, List<CableType> types) {
        Run run = cable.runs().get(index);
        type.show(types.stream().sorted(Comparator.comparing(CableType::family)).toList(), run.type());
        length.show(dial(run.lengthMetres(), cable.lengthMetres() - run.lengthMetres()));
        figures.setText(texts.say(
                "run.figures",
                model.words().quantities().ohms(run.type().section().impedanceOhms()),
                Quantities.number(run.type().section().velocityFraction(), 3)));
        boolean isOnly = cable.runs().size() == 1;
        remove.setVisible(!isOnly);
        remove.setManaged(!isOnly);
    }

    void enter() {
        length.field().requestFocus();
    }
}
