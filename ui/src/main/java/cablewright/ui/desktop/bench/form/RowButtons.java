// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.text.Texts;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;

/** What is done to a row as a whole: one place up, one place down, away. */
public final class RowButtons extends HBox {

    /**
     * Makes the buttons.
     *
     * @param id beginning of the names of its nodes
     * @param kind what the row is; texts call it {@code <kind>.up}, {@code <kind>.down} and {@code <kind>.remove}
     * @param number its number, from 1
     * @param texts the sentences of the editors
     * @param move moves the row by −1 or 1
     * @param remove takes it away
     */
    public RowButtons(String id, String kind, int number, Texts texts, IntConsumer move, Runnable remove) {
        setAlignment(Pos.TOP_RIGHT);
        setMinWidth(Region.USE_PREF_SIZE);
        getChildren()
                .addAll(
                        new IconButton(
                                id + "-up-" + number,
                                Feather.ARROW_UP,
                                texts.say(kind + ".up", number),
                                () -> move.accept(-1)),
                        new IconButton(
                                id + "-down-" + number,
                                Feather.ARROW_DOWN,
                                texts.say(kind + ".down", number),
                                () -> move.accept(1)),
                        new IconButton(
                                id + "-remove-" + number,
                                Feather.TRASH_2,
                                texts.say(kind + ".remove", number),
                                remove));
    }
}
