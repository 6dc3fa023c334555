// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.sheet;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.IconButton;
import cablewright.ui.desktop.bench.form.LocalField;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.TypedField;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;

/** One attenuation of the sheet: at which frequency, and how much. */
final class PointRow extends VBox {

    private static final NumberEntry MEGAHERTZ = NumberEntry.between("MHz", 1e6, 1e3, 1e11, 6);
    private static final NumberEntry DECIBEL = new NumberEntry("", 1, 0, 1e5, false, 4);

    private final DataSheetViewModel.Point point;

    PointRow(DataSheetViewModel model, DataSheetViewModel.Point point, int number, Consumer<PointRow> remove) {
        this.point = point;
        Texts texts = model.texts();
        TypedField frequency = new TypedField(
                        "sheet-frequency-" + number,
                        texts.say("sheet.frequency", number),
                        field(MEGAHERTZ, texts, value -> model.frequency(point, value)))
                .narrow(6)
                .unit("MHz")
                .unnamed();
        TypedField attenuation = new TypedField(
                        "sheet-attenuation-" + number,
                        texts.say("sheet.attenuation", number),
                        field(DECIBEL, texts, value -> model.attenuation(point, value)))
                .narrow(6)
                .unit("dB")
                .unnamed();
        HBox row = new HBox(
                frequency,
                attenuation,
                new IconButton(
                        "sheet-point-remove-" + number,
                        Feather.TRASH_2,
                        texts.say("sheet.point.remove", number),
                        () -> remove.accept(this)));
        row.setAlignment(Pos.TOP_LEFT);
        row.getStyleClass().add("item-head");
        getChildren().addAll(row, frequency.problem(), attenuation.problem());
    }

    /** An empty field is not filled in yet; anything else must be a number. */
    private static LocalField field(NumberEntry entry, Texts texts, Consumer<OptionalDouble> set) {
        return new LocalField("", typed -> {
            Optional<String> wrong = entry.take(typed, texts, value -> {
                set.accept(OptionalDouble.of(value));
                return Optional.empty();
            });
            if (wrong.isPresent()) {
                set.accept(OptionalDouble.empty());
            }
            return typed.isBlank() ? Optional.empty() : wrong;
        });
    }

    DataSheetViewModel.Point point() {
        return point;
    }
}
