// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.course;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import java.util.Optional;

/**
 * A trace that the simulator draws for a page from a cable in the lesson's file, without noise.
 *
 * @param id name within its lesson's figures, by which numbers in texts refer to it
 * @param caption what it shows, one line; read to those who can't see it
 * @param cable the cable
 * @param instrument what measures it; absent for the usual one, with the impedance of the cable's first run
 * @param settings what is set on it
 * @param slider a number of the cable or the settings that the reader may change
 */
public record LiveFigure(
        @Id String id,
        @Text String caption,
        Cable cable,
        Optional<Instrument> instrument,
        Settings settings,
        Optional<FigureSlider> slider) {

    /** Checks the ranges. */
    public LiveFigure {
        Require.components(LiveFigure.class, id, caption, cable, instrument, settings, slider);
    }

    /**
     * Returns what measures the cable.
     *
     * @return the instrument that is given, or the usual one
     */
    public Instrument measuredBy() {
        return instrument.orElseGet(
                () -> Instrument.usual(cable.runs().get(0).type().nominalImpedanceOhms()));
    }
}
