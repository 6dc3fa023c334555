// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import java.util.List;

/** When each place of an event answers on a trace: from its arrival to its end, the pulse, and what loss makes late. */
public final class EventWindows {

    private static final double RISE_TIMES = 8;
    private static final double EDGE_HERTZ_SECONDS = 0.35;

    private final CableProfile profile;
    private final Settings settings;
    private final Instrument instrument;
    private final DispersionDelay blunting;

    /** Finds when the echoes of an event arrive and end. */
    public EventWindows(CableProfile profile, Instrument instrument, Settings settings) {
        this.profile = profile;
        this.settings = settings;
        this.instrument = instrument;
        this.blunting = new DispersionDelay(
                profile, EDGE_HERTZ_SECONDS / settings.stimulus().shortestEdgeSeconds());
    }

    /**
     * One stretch of time to which an event answers, and the place that it stands for.
     *
     * @param metres the place [m]
     * @param arrivalSeconds when its first echo is back [s]
     * @param endSeconds when its last echo has passed [s]
     */
    public record Window(double metres, double arrivalSeconds, double endSeconds) {}

    /** One window, or one for each end of a stretch that is longer than half the pulse; seen from the end tested. */
    public List<Window> of(Event event) {
        double start = profile.secondsTo(event.startMetres()) * 2;
        double stop = profile.secondsTo(event.endMetres()) * 2;
        double tail = settings.stimulus().settledSeconds() + RISE_TIMES * receiverSeconds();
        double late = blunting.secondsThereAndBack(event.endMetres());
        boolean twoPlaces = event instanceof LineCondition lc
                && lc.longestStepMetres() == Double.POSITIVE_INFINITY
                && stop - start > settings.stimulus().resolutionSeconds();
        if (twoPlaces) {
            return List.of(
                    new Window(event.startMetres(), start, Math.max(start + tail, Math.min(stop, start + tail + late))),
                    new Window(event.endMetres(), stop, stop + tail + late));
        }
        double middle = (event.startMetres() + event.endMetres()) / 2;
        return List.of(new Window(middle, start, stop + tail + late));
    }

    private double receiverSeconds() {
        return 0.1 / instrument.bandwidthHertz();
    }
}
