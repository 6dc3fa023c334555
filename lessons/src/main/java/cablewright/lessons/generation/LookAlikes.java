// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.explanation.visibility.VisibilityRules;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether another kind of event at the same place could have made the same trace.
 *
 * <p>For each look-alike the size is chosen that comes nearest: with u the change that a small one makes, the factor
 * a = Σ u·d/Σ u² fits it to the change d of the true event by least squares. What is left, max |d − a u|, must be at least
 * 3 σ, or a must have the wrong sign. Small events only are compared so; their change grows in proportion to their size.
 */
public final class LookAlikes {

    private static final double PROBE = 0.02;

    private final Measurement measurement;
    private final Settings settings;

    /**
     * Compares a cable with its look-alikes.
     *
     * @param measurement the cable and what measures it
     * @param settings what is set
     */
    public LookAlikes(Measurement measurement, Settings settings) {
        this.measurement = measurement;
        this.settings = settings;
    }

    /** Whether each damage of the cable can be distinguished from every look-alike. */
    boolean allToldApart(double ohms) {
        return measurement.tested().events().stream().allMatch(event -> toldApart(event.id(), ohms));
    }

    /**
     * Returns whether an event of the cable can be distinguished from every look-alike.
     *
     * @param eventId the event
     * @param ohms impedance of the line [Ω]
     * @return whether none of them leaves less than 3 σ
     */
    public boolean toldApart(String eventId, double ohms) {
        Cable cable = measurement.tested();
        List<Event> others = probes(cable.event(eventId).orElseThrow(), ohms);
        if (others.isEmpty()) {
            return true;
        }
        Trace with = trace(cable);
        Cable without = cable.withoutEvent(eventId);
        Trace bare = trace(without);
        return others.stream().noneMatch(other -> {
            List<Event> events = new ArrayList<>(without.events());
            events.add(other);
            return fits(with, bare, trace(without.withEvents(events)));
        });
    }

    private Trace trace(Cable cable) {
        return measurement.of(cable).withoutNoise(settings);
    }

    private static boolean fits(Trace with, Trace bare, Trace probe) {
        double along = 0;
        double size = 0;
        for (int i = 0; i < with.count(); i++) {
            double u = probe.volts(i) - bare.volts(i);
            along += u * (with.volts(i) - bare.volts(i));
            size += u * u;
        }
        if (along <= 0) {
            return false;
        }
        double left = 0;
        for (int i = 0; i < with.count(); i++) {
            double u = probe.volts(i) - bare.volts(i);
            left = Math.max(left, Math.abs(with.volts(i) - bare.volts(i) - along / size * u));
        }
        return left < VisibilityRules.MARGINAL_OVER_NOISE * with.noiseVolts();
    }

    /** Small events of the kinds that the true one might be taken for, at its place. */
    private static List<Event> probes(Event event, double ohms) {
        double at = event.startMetres();
        Event acrossResistance = new TouchingConductors("probe", at, OptionalDouble.of(ohms / PROBE));
        Event inResistance = new CorrodedJoint("probe", at, ohms * PROBE, OptionalDouble.empty());
        Event acrossCapacitance = new ShuntPart("probe", at, Lumped.capacitor(PROBE * 1e-9 / ohms));
        Event inInductance = new SeriesPart("probe", at, Lumped.inductor(PROBE * 1e-9 * ohms));
        switch (event.kind()) {
            case PINCH:
                return List.of(acrossResistance);
            case PARTIAL_SHORT:
            case ONE_SIDE_EARTHED:
            case CROSS:
                return List.of(acrossCapacitance);
            case WATER:
            case OFF_CENTRE:
            case GRADUAL_DAMAGE:
                return List.of(acrossResistance, acrossCapacitance);
            case SPREAD_PAIR:
            case SPLIT:
            case ONE_SIDE_OPEN:
                return List.of(inResistance);
            case PARTIAL_OPEN:
            case CORRODED_JOINT:
                return List.of(inInductance);
            default:
                return List.of();
        }
    }
}
