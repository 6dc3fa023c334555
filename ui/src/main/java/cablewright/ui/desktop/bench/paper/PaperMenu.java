// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.paper;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.paper.PaperViewModel.Sheets;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.LengthUnit;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.stage.FileChooser;

/** The menu for paper and pictures, and beside it what came of the last thing. */
public final class PaperMenu extends HBox {

    private final PaperViewModel model;
    private final Supplier<Node> tracks;
    private final Texts texts;
    private final MenuButton menu = new MenuButton();

    /**
     * Makes the menu.
     *
     * @param model what puts things on paper
     * @param tracks what a copied picture shows
     * @param texts the sentences of the editors
     */
    public PaperMenu(PaperViewModel model, Supplier<Node> tracks, Texts texts) {
        this.texts = texts;
        this.model = model;
        this.tracks = tracks;
        getStyleClass().add("paper-menu");
        getStylesheets()
                .add(PaperMenu.class
                        .getResource("/cablewright/ui/desktop/bench/editors.css")
                        .toExternalForm());
        setAlignment(Pos.CENTER_LEFT);
        menu.setId("paper");
        menu.setText(texts.say("paper"));
        menu.setAccessibleText(texts.say("paper.name"));
        menu.setMinWidth(Region.USE_PREF_SIZE);
        menu.getStyleClass().addAll("flat", "small-button");
        fill();
        Label message = new Label();
        message.setId("paper-message");
        message.getStyleClass().add("quiet");
        message.textProperty().bind(model.messageProperty());
        getChildren().addAll(menu, message);
    }

    /**
     * Makes the menu of the Bench.
     *
     * @param bench the Bench, whose exercise and trace go on paper
     * @param unit the unit of lengths
     * @param tracks what a copied picture shows
     * @return the menu
     */
    public static PaperMenu of(BenchViewModel bench, ObservableValue<LengthUnit> unit, Supplier<Node> tracks) {
        Texts texts = EditorTexts.open(bench.texts().locale());
        PaperViewModel model = new PaperViewModel(
                () -> bench.document().now().exercise(),
                () -> Optional.ofNullable(
                                bench.trace().traceTrack().traceProperty().get())
                        .map(taken -> new PaperViewModel.Shown(
                                taken, bench.trace().endProperty().get())),
                unit,
                bench.threads(),
                texts);
        return new PaperMenu(model, tracks, texts);
    }

    private void fill() {
        ToggleGroup sizes = new ToggleGroup();
        for (PaperSize size : PaperSize.values()) {
            RadioMenuItem item = new RadioMenuItem(texts.say("paper.size." + word(size)));
            item.setId("paper-" + word(size));
            item.setToggleGroup(sizes);
            item.setSelected(size == model.paperProperty().get());
            item.setOnAction(event -> model.paperProperty().set(size));
            menu.getItems().add(item);
        }
        menu.getItems().add(new SeparatorMenuItem());
        for (Sheets sheets : Sheets.values()) {
            add("pdf-" + word(sheets), "", () -> choose(name(sheets), List.of("pdf"), to -> model.savePdf(sheets, to)));
        }
        add("print-worksheet", "Shortcut+Shift+P", () -> model.print(Sheets.WORKSHEET));
        add("print-answers", "", () -> model.print(Sheets.ANSWERS));
        menu.getItems().add(new SeparatorMenuItem());
        add(
                "picture",
                "Shortcut+Shift+G",
                () -> choose("tracks.png", List.of("png", "svg", "pdf"), model::savePicture));
        add("copy", "", this::copy);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static String name(Sheets sheets) {
        return word(sheets) + ".pdf";
    }

    private void add(String name, String key, Runnable action) {
        MenuItem item = new MenuItem(texts.say("paper." + name));
        item.setId("paper-" + name);
        if (!key.isEmpty()) {
            item.setAccelerator(KeyCombination.valueOf(key));
        }
        item.setOnAction(event -> action.run());
        menu.getItems().add(item);
    }

    private void choose(String name, List<String> endings, Consumer<Path> save) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.say("paper.choose"));
        chooser.setInitialFileName(name);
        for (String ending : endings) {
            chooser.getExtensionFilters()
                    .add(new FileChooser.ExtensionFilter(ending.toUpperCase(Locale.ROOT), "*." + ending));
        }
        Optional.ofNullable(chooser.showSaveDialog(getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(save);
    }

    private void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putImage(tracks.get().snapshot(new SnapshotParameters(), null));
        Clipboard.getSystemClipboard().setContent(content);
        model.copied();
    }
}
