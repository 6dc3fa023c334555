// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import java.util.Optional;

/**
 * The ghost of two events: out to the farther, back to the nearer, out again, and home. Its height is simulated, not
 * estimated: with r the trace of both, r₁ and r₂ those with only one of them and r₀ with neither, r − r₁ − r₂ + r₀ holds
 * only what needs both.
 *
 * @param shownMetres where the trace shows it, at the set velocity [m]
 * @param heightVolts its largest swing, with its sign, for an outgoing wave of 1 V [V]
 */
record VisibleGhost(double shownMetres, double heightVolts) {

    /** Looks for the ghost; empty where it does not stand clear above the noise in open cable. */
    static Optional<VisibleGhost> of(Measurement measurement, Event nearer, Event farther, Settings settings) {
        Cable cable = measurement.tested();
        CableProfile profile = CableProfile.of(cable);
        double seconds = 4 * profile.secondsTo(farther.startMetres()) - 2 * profile.secondsTo(nearer.startMetres());
        double shown = settings.metresThereAndBack(seconds);
        double room = 2 * settings.halfPulseMetres();
        if (!isOpen(cable, profile, settings, shown, room)) {
            return Optional.empty();
        }
        Trace[] traces = {
            measurement.withoutNoise(settings),
            measurement.of(cable.withoutEvent(nearer.id())).withoutNoise(settings),
            measurement.of(cable.withoutEvent(farther.id())).withoutNoise(settings),
            measurement
                    .of(cable.withoutEvent(nearer.id()).withoutEvent(farther.id()))
                    .withoutNoise(settings)
        };
        double height = 0;
        for (int i = traces[0].indexNear(shown - room / 2); i <= traces[0].indexNear(shown + room); i++) {
            double both = traces[0].volts(i) - traces[1].volts(i) - traces[2].volts(i) + traces[3].volts(i);
            height = Math.abs(both) > Math.abs(height) ? both : height;
        }
        boolean clear = Math.abs(height) >= VisibilityRules.CLEAR_OVER_NOISE * traces[0].noiseVolts();
        return clear ? Optional.of(new VisibleGhost(shown, height)) : Optional.empty();
    }

    private static boolean isOpen(Cable cable, CableProfile profile, Settings settings, double shown, double room) {
        double end = settings.metresThereAndBack(2 * profile.secondsTo(cable.lengthMetres()));
        return shown + room < end
                && cable.events().stream().allMatch(event -> {
                    double from = settings.metresThereAndBack(2 * profile.secondsTo(event.startMetres()));
                    double to = settings.metresThereAndBack(2 * profile.secondsTo(event.endMetres()));
                    return shown + room < from || shown - room > to;
                });
    }
}
