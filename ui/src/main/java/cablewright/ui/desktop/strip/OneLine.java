// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.strip;

import javafx.scene.control.Label;

/** A line that may be missed: it is shown where it fits as a whole, and keeps its height where it does not. */
public final class OneLine extends Label {

    private boolean isWanted = true;

    /** Makes an empty line. */
    public OneLine() {
        setMinWidth(0);
    }

    /**
     * Shows the line where it fits, or takes it away with its height.
     *
     * @param wanted whether there is room for it at all
     */
    public void setWanted(boolean wanted) {
        isWanted = wanted;
        setManaged(wanted);
        showIfItFits();
    }

    @Override
    public void resize(double width, double height) {
        super.resize(width, height);
        showIfItFits();
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        showIfItFits();
    }

    private void showIfItFits() {
        setVisible(isWanted && prefWidth(-1) <= getWidth());
    }
}
