// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.drawing.track.WavePlay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What the cable track shows: nothing while it is shut, then the cable, how each event shows, and perhaps a wave. */
public final class CableTrackViewModel {

    private final ObjectProperty<Cable> cable = new SimpleObjectProperty<>();
    private final ObjectProperty<Set<String>> selected = new SimpleObjectProperty<>(Set.of());
    private final ObjectProperty<Optional<CableDrawing>> drawing = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<List<EventVisibility>> sights = new SimpleObjectProperty<>(List.of());
    private final ObjectProperty<Optional<WavePlay>> wave = new SimpleObjectProperty<>(Optional.empty());
    private final IntegerProperty frame = new SimpleIntegerProperty(-1);
    private final DoubleProperty clipVolts = new SimpleDoubleProperty(1);

    /**
     * Makes a shut track.
     *
     * @param cable the cable that is hidden in it
     */
    public CableTrackViewModel(Cable cable) {
        this.cable.set(cable);
    }

    /**
     * Returns the cable.
     *
     * @return the cable that is hidden in the track, or being built on it
     */
    public ObjectProperty<Cable> cableProperty() {
        return cable;
    }

    /**
     * Returns which events are selected.
     *
     * @return their names; none where nobody can select
     */
    public ObjectProperty<Set<String>> selectedProperty() {
        return selected;
    }

    /**
     * Returns the cable as it is drawn.
     *
     * @return the drawing; empty while the track is shut
     */
    public ObjectProperty<Optional<CableDrawing>> drawingProperty() {
        return drawing;
    }

    /**
     * Returns how the events show at the settings that are set.
     *
     * @return the sights; empty until they are worked out
     */
    public ObjectProperty<List<EventVisibility>> sightsProperty() {
        return sights;
    }

    /**
     * Returns the wave that can be played.
     *
     * @return the wave; empty until it is asked for, and again once the settings change
     */
    public ObjectProperty<Optional<WavePlay>> waveProperty() {
        return wave;
    }

    /**
     * Returns which frame of the wave is shown.
     *
     * @return the frame, from 0; below 0 while nothing plays
     */
    public IntegerProperty frameProperty() {
        return frame;
    }

    /**
     * Returns the height up to which the wave is drawn: the level at which the converter clips.
     *
     * @return voltage for an outgoing wave of 1 V [V]
     */
    public DoubleProperty clipVoltsProperty() {
        return clipVolts;
    }

    /**
     * Returns whether a wave is being shown.
     *
     * @return true while one plays or stands still
     */
    public boolean isPlaying() {
        return wave.get().isPresent() && frame.get() >= 0;
    }
}
