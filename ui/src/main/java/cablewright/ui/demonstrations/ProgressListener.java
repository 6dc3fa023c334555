// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import cablewright.ui.drawing.figure.Figure;

/** Hears of a figure that takes long, and can have it stopped. Called from the thread that works. */
public interface ProgressListener {

    /**
     * Returns how far the work is.
     *
     * @param share 0 to 1
     */
    void progress(double share);

    /**
     * Hands out a figure that is not yet as good as it will be.
     *
     * @param figure the figure
     */
    void preview(Figure figure);

    /**
     * Returns whether nobody waits for the figure any more.
     *
     * @return whether to stop
     */
    boolean isCancelled();

    /**
     * Hears nothing and never stops.
     *
     * @return the listener
     */
    static ProgressListener none() {
        return new ProgressListener() {
            @Override
            public void progress(double share) {
                // Nobody asked.
            }

            @Override
            public void preview(Figure figure) {
                // Nobody asked.
            }

            @Override
            public boolean isCancelled() {
                return false;
            }
        };
    }
}
