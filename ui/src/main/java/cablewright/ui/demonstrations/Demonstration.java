// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;

/** A demonstration: asks, and once somebody has answered shows what follows from what is set. */
public interface Demonstration {

    /** How many reasons there are to choose from. */
    int REASONS = 3;

    /**
     * Returns its name among the words: {@code <id>.title}, {@code <id>.question}, {@code <id>.answer.0} and so on,
     * {@code <id>.reason.0} to {@code .2}, {@code <id>.because}, and {@code <id>.control.<control>}.
     *
     * @return a short word
     */
    String id();

    /**
     * Returns how many answers there are to choose from.
     *
     * @return 2 to 5
     */
    int answers();

    /**
     * Returns which answer is right.
     *
     * @return its number, from 0
     */
    int rightAnswer();

    /**
     * Returns which of the reasons is the one for the right answer.
     *
     * @return its number, from 0
     */
    int rightReason();

    /**
     * Returns what can be set.
     *
     * @return the controls, in the order in which they are laid out
     */
    List<Control> controls();

    /**
     * Computes the figure. Takes long; not for the screen's thread.
     *
     * @param values what is set
     * @param words the language and the unit of lengths
     * @param listener hears of it, and can stop it
     * @return the figure; empty if it was stopped
     * @throws IllegalArgumentException if what is set can't be, in words
     */
    Optional<Figure> figure(Values values, Words words, ProgressListener listener);

    /**
     * Returns what a click on a panel sets.
     *
     * @param panel number of the panel in the figure, from 0
     * @param x place on its horizontal axis, in shares of it
     * @param y place on its vertical axis, in shares of it
     * @param values what is set
     * @return what is to be set
     */
    default Values clicked(int panel, double x, double y, Values values) {
        return values;
    }
}
