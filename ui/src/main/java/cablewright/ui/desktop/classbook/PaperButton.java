// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.classbook;

import cablewright.lessons.text.Texts;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.Words;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.Region;

/** The menu that puts the class book on paper. */
final class PaperButton extends MenuButton {

    private PaperSize size = PaperSize.A4;

    /**
     * Makes the menu.
     *
     * @param model the class book
     * @param words the words in the unit that is shown
     * @param choose asks for a file by its usual name, and hands it on
     * @param texts texts of the desktop
     */
    PaperButton(
            ClassBookViewModel model, Supplier<Words> words, BiConsumer<String, Consumer<Path>> choose, Texts texts) {
        super(texts.say("classbook.paper"));
        setId("classbook-paper");
        setAccessibleText(texts.say("classbook.paper.name"));
        setMinWidth(Region.USE_PREF_SIZE);
        ToggleGroup sizes = new ToggleGroup();
        for (PaperSize one : PaperSize.values()) {
            RadioMenuItem item =
                    new RadioMenuItem(texts.say("classbook.paper." + one.name().toLowerCase(Locale.ROOT)));
            item.setToggleGroup(sizes);
            item.setSelected(one == size);
            item.setOnAction(event -> size = one);
            getItems().add(item);
        }
        MenuItem pdf = new MenuItem(texts.say("classbook.paper.pdf"));
        pdf.setId("classbook-pdf");
        pdf.setOnAction(event ->
                choose.accept(texts.say("classbook.paper.file"), file -> model.savePdf(file, size, words.get())));
        MenuItem print = new MenuItem(texts.say("classbook.paper.print"));
        print.setId("classbook-print");
        print.setAccelerator(KeyCombination.valueOf("Shortcut+Shift+P"));
        print.setOnAction(event -> model.print(size, words.get()));
        getItems().addAll(new SeparatorMenuItem(), pdf, print);
    }
}
