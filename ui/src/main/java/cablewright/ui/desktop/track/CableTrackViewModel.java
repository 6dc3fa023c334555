package cablewright.ui.desktop.track;

import cablewright.simulator.explanation.EventSight;
import cablewright.ui.chart.CableDrawing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What the cable track shows: nothing while it is shut, then the cable, how each event shows, and perhaps a wave. */
public final class CableTrackViewModel {

    private final ObjectProperty<Optional<CableDrawing>> drawing = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<List<EventSight>> sights = new SimpleObjectProperty<>(List.of());
    private final ObjectProperty<OptionalDouble> wave = new SimpleObjectProperty<>(OptionalDouble.empty());

    /** Makes a shut track. */
    public CableTrackViewModel() {}

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
    public ObjectProperty<List<EventSight>> sightsProperty() {
        return sights;
    }

    /**
     * Returns where the front of the playing wave is.
     *
     * @return shown distance of the front [m]; empty while nothing plays
     */
    public ObjectProperty<OptionalDouble> waveProperty() {
        return wave;
    }
}
