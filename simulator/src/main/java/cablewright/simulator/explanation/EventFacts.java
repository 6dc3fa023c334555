// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.compile.CableProfile.Piece;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.reading.Reflection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The figures of one place of an event besides its visibility: impedances, loss on the way, and what a reader would read
 * from its height.
 *
 * @param event the event, with distances from the near end
 * @param sight how the event shows
 * @param place how this place of it shows
 * @param soundOhms impedance of the cable without the event there [Ω]
 * @param eventOhms impedance that a condition leaves, where it differs most [Ω]; absent for a thing at one place
 * @param lossDecibels loss to the place and back for the wave that is set [dB]; absent where none of it gets there and back
 * @param coefficient reflection coefficient that a reader would tell: the height over that of a full reflection there
 */
public record EventFacts(
        Event event,
        EventVisibility sight,
        PlaceVisibility place,
        double soundOhms,
        OptionalDouble eventOhms,
        OptionalDouble lossDecibels,
        OptionalDouble coefficient) {

    /**
     * Looks at events that show, or do not, on a trace.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param settings what is set
     * @param end the end that is tested
     * @param sights how the events show at these settings
     * @return one entry for each place of each of them, in their order
     */
    public static List<EventFacts> of(
            Cable cable, Instrument instrument, Settings settings, LineEnd end, List<EventVisibility> sights) {
        FullEcho echo = new FullEcho(instrument, settings);
        CableProfile profile = CableProfile.of(cable, settings.stimulus().topHertz());
        List<EventFacts> facts = new ArrayList<>();
        for (EventVisibility sight : sights) {
            Event event = cable.event(sight.eventId()).orElseThrow();
            for (PlaceVisibility place : sight.places()) {
                OptionalDouble full = echo.volts(cable, end, place.trueMetres());
                facts.add(new EventFacts(
                        event,
                        sight,
                        place,
                        cable.runAt(event.startMetres()).type().section().impedanceOhms(),
                        ohms(profile, event, cable),
                        decibels(full),
                        coefficient(place, full)));
            }
        }
        return facts;
    }

    private static OptionalDouble decibels(OptionalDouble full) {
        boolean some = full.isPresent() && full.getAsDouble() > 0;
        return some ? OptionalDouble.of(-20 * Math.log10(full.getAsDouble())) : OptionalDouble.empty();
    }

    private static OptionalDouble coefficient(PlaceVisibility place, OptionalDouble full) {
        boolean some = full.isPresent() && full.getAsDouble() > 0;
        return some
                ? OptionalDouble.of(Math.max(-1, Math.min(1, place.expectedVolts() / full.getAsDouble())))
                : OptionalDouble.empty();
    }

    private static OptionalDouble ohms(CableProfile profile, Event event, Cable cable) {
        if (!(event instanceof LineCondition)) {
            return OptionalDouble.empty();
        }
        double sound = cable.runAt(event.startMetres()).type().section().impedanceOhms();
        return profile.pieces().stream()
                .filter(piece -> piece.madeBy().contains(event.id()))
                .mapToDouble((Piece piece) -> piece.section().impedanceOhms())
                .boxed()
                .max(Comparator.comparingDouble(ohms -> Math.abs(ohms - sound)))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /**
     * Returns the impedance that a reader would tell from the height alone.
     *
     * @return impedance [Ω]; absent where nothing that was sent gets there and back
     */
    public OptionalDouble apparentOhms() {
        return coefficient.isPresent()
                ? OptionalDouble.of(new Reflection(coefficient.getAsDouble()).impedanceOhms(soundOhms))
                : OptionalDouble.empty();
    }
}
