// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.wave;

import javafx.animation.AnimationTimer;

/** Lets the time of the screen pass for a wave while it plays; a page makes one, however many controls it shows. */
public final class WaveTimer extends AnimationTimer {

    private static final double NANO = 1e-9;

    private final WaveViewModel model;
    private long last;

    /**
     * Begins to follow a wave.
     *
     * @param model the wave
     */
    public WaveTimer(WaveViewModel model) {
        this.model = model;
        model.playingProperty().addListener((o, before, now) -> {
            if (now) {
                last = 0;
                start();
            } else {
                stop();
            }
        });
    }

    @Override
    public void handle(long now) {
        if (last != 0) {
            model.advance((now - last) * NANO);
        }
        last = now;
    }
}
