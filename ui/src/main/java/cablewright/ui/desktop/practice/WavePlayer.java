// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import javafx.animation.AnimationTimer;

/** Turns the pages of the wave: all of it in a few seconds, however many frames it has. */
final class WavePlayer extends AnimationTimer {

    private static final double SECONDS_OF_A_PLAY = 7;
    private static final double NANO = 1e-9;

    private final ExerciseViewModel model;
    private long startedAt;

    WavePlayer(ExerciseViewModel model) {
        this.model = model;
        model.reveal().cableTrack().waveProperty().addListener((o, before, now) -> {
            startedAt = 0;
            if (now.isPresent()) {
                start();
            } else {
                stop();
            }
        });
    }

    /** Plays from the start, or takes the wave away if one plays. */
    void toggle() {
        if (model.reveal().cableTrack().isPlaying()) {
            model.reveal().stopWave();
        } else {
            model.reveal().playWave();
        }
    }

    @Override
    public void handle(long now) {
        if (startedAt == 0) {
            startedAt = now;
        }
        double share = (now - startedAt) * NANO / SECONDS_OF_A_PLAY;
        model.reveal().cableTrack().waveProperty().get().ifPresent(play -> model.reveal()
                .showFrame((int) (share * play.frames())));
    }
}
