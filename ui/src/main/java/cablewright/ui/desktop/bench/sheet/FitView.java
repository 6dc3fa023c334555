// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.sheet;

import cablewright.lessons.text.Texts;
import cablewright.simulator.crosssection.datasheet.DataSheetFit;
import cablewright.ui.desktop.bench.sheet.DataSheetViewModel.Fitted;
import cablewright.ui.words.Quantities;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** How well a type meets its data sheet: what is left over at each frequency, as a table and as a small chart. */
final class FitView extends VBox {

    private static final double GOOD = 0.05;
    private static final double HUNDRED_METRES = 100;

    private final Texts texts;
    private final Label summary = new Label();
    private final GridPane table = new GridPane();
    private final FitChart chart;

    FitView(DataSheetViewModel model) {
        this.texts = model.texts();
        this.chart = new FitChart(texts);
        getStyleClass().add("section-fields");
        summary.setId("sheet-fit");
        summary.setWrapText(true);
        summary.setMinHeight(Region.USE_PREF_SIZE);
        table.setId("sheet-residuals");
        table.getStyleClass().add("residuals");
        Label per = new Label(texts.say("sheet.per"));
        per.getStyleClass().add("quiet");
        getChildren().addAll(summary, table, per, chart);
        model.fittedProperty().addListener((o, before, now) -> show(now));
        show(model.fittedProperty().get());
    }

    private void show(Optional<Fitted> fitted) {
        setVisible(fitted.isPresent());
        setManaged(fitted.isPresent());
        fitted.ifPresent(this::fill);
    }

    private void fill(Fitted fitted) {
        DataSheetFit fit = fitted.section().fit();
        String rms = Quantities.number(100 * fit.relativeRms(), 1);
        String resistance = texts.say(
                "sheet.resistance." + fit.resistanceOrigin().name().toLowerCase(Locale.ROOT),
                Quantities.significant(1000 * fit.loopResistanceOhmsPerMetre()));
        summary.setText(
                texts.say(fit.relativeRms() > GOOD ? "sheet.fit.poor" : "sheet.fit.good", rms) + " " + resistance);
        table.getChildren().clear();
        head();
        int row = 1;
        for (DataSheetFit.Point point : fit.points()) {
            add(
                    row++,
                    List.of(
                            Quantities.significant(point.frequencyHertz() / 1e6),
                            Quantities.significant(HUNDRED_METRES * point.sheetDecibelPerMetre()),
                            Quantities.significant(HUNDRED_METRES * point.fitDecibelPerMetre()),
                            signed(100 * point.relativeResidual())));
        }
        chart.show(fitted);
    }

    private static String signed(double percent) {
        String text = Quantities.number(percent, 1);
        return (percent > 0 && !text.equals("0.0") ? "+" : "") + text + "\u00a0%";
    }

    private void head() {
        add(
                0,
                List.of(
                        texts.say("sheet.column.frequency"),
                        texts.say("sheet.column.sheet"),
                        texts.say("sheet.column.fit"),
                        texts.say("sheet.column.residual")));
        table.getChildren().forEach(cell -> cell.getStyleClass().add("quiet"));
    }

    private void add(int row, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            Label cell = new Label(cells.get(i));
            GridPane.setHalignment(cell, HPos.RIGHT);
            table.add(cell, i, row);
        }
    }
}
