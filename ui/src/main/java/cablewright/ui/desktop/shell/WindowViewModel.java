// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.ui.words.LengthUnit;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What holds for the whole window: unit of lengths, light or dark, and the projector's scale. */
public final class WindowViewModel {

    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.METRES);
    private final BooleanProperty dark = new SimpleBooleanProperty();
    private final BooleanProperty projector = new SimpleBooleanProperty();
    private final StringProperty trainee = new SimpleStringProperty("Trainee");

    /** Makes a light window in metres at its usual scale. */
    public WindowViewModel() {}

    public ObjectProperty<LengthUnit> unitProperty() {
        return unit;
    }

    public BooleanProperty darkProperty() {
        return dark;
    }

    /**
     * Returns whether everything is drawn half as large again.
     *
     * @return true for a projector
     */
    public BooleanProperty projectorProperty() {
        return projector;
    }

    /**
     * Returns the name under which attempts are kept.
     *
     * @return the trainee's name
     */
    public StringProperty traineeProperty() {
        return trainee;
    }

    /** Shows lengths in the other unit. */
    public void switchUnit() {
        unit.set(unit.get().other());
    }

    /** Turns light to dark or dark to light. */
    public void switchDark() {
        dark.set(!dark.get());
    }

    /** Turns the projector's scale on or off. */
    public void switchProjector() {
        projector.set(!projector.get());
    }
}
