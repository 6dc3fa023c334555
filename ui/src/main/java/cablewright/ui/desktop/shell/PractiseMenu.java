// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.practice.PracticeSession.Mode;
import cablewright.lessons.text.Texts;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** Names what is being practised, and lets one choose something else. */
final class PractiseMenu extends MenuButton {

    private final Texts texts;

    /**
     * What somebody wants to practise.
     *
     * @param mode how
     * @param families on which lines
     */
    record Wish(Mode mode, List<ExerciseFamily> families) {
        Wish {
            families = List.copyOf(families);
        }
    }

    PractiseMenu(String now, Texts texts, Consumer<Wish> practise, Runnable builtIn) {
        super(now);
        this.texts = texts;
        setId("practise");
        getStyleClass().addAll("flat", "lesson-title");
        setAccessibleText(texts.say("practise.name", now));
        MenuItem review = new MenuItem(texts.say("practise.review"));
        review.setId("practise-review");
        review.setOnAction(event -> practise.accept(new Wish(Mode.REVIEW, List.of(ExerciseFamily.values()))));
        MenuItem lesson = new MenuItem(texts.say("practise.builtIn"));
        lesson.setOnAction(event -> builtIn.run());
        getItems()
                .addAll(
                        families("practise.on", Mode.UNTIMED, practise),
                        families("practise.timed", Mode.TIMED, practise),
                        review,
                        new SeparatorMenuItem(),
                        lesson);
    }

    private Menu families(String key, Mode mode, Consumer<Wish> practise) {
        Menu menu = new Menu(texts.say(key));
        menu.setId(key.replace('.', '-'));
        menu.getItems().add(item(texts.say("practise.everything"), mode, List.of(ExerciseFamily.values()), practise));
        for (ExerciseFamily family : ExerciseFamily.values()) {
            menu.getItems().add(item(name(family, texts), mode, List.of(family), practise));
        }
        return menu;
    }

    private static MenuItem item(String text, Mode mode, List<ExerciseFamily> families, Consumer<Wish> practise) {
        MenuItem item = new MenuItem(text);
        item.setOnAction(event -> practise.accept(new Wish(mode, families)));
        return item;
    }

    static String name(ExerciseFamily family, Texts texts) {
        return texts.say("family." + family.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
