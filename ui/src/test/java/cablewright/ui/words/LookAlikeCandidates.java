// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.material.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Events of a kind about the place of a true one, in many sizes, lengths and places: the brute force behind "nearest". */
final class LookAlikeCandidates {

    private static final int SIZES = 13;
    private static final double[] LENGTHS = {0.05, 0.2, 0.7, 2, 5};
    private static final double[] SHIFTS = {-0.4, -0.1, 0, 0.1, 0.4};
    private static final String ID = "candidate";

    private LookAlikeCandidates() {}

    static List<Event> of(Cable cable, String eventId, EventKind kind, Settings settings) {
        Event truth = cable.event(eventId).orElseThrow();
        double half = settings.halfPulseMetres();
        double ohms = cable.runAt(truth.startMetres()).type().nominalImpedanceOhms();
        double middle = (truth.startMetres() + truth.endMetres()) / 2;
        List<Double> lengths = new ArrayList<>();
        for (double share : LENGTHS) {
            lengths.add(share * half);
        }
        lengths.add(Math.max(0.05, truth.endMetres() - truth.startMetres()));
        List<Event> all = new ArrayList<>();
        for (double shift : SHIFTS) {
            for (int i = 0; i < SIZES; i++) {
                double size = (double) i / (SIZES - 1);
                double at = Math.max(0, Math.min(cable.lengthMetres(), middle + shift * half));
                point(kind, at, ohms, size, all);
                if (shift == 0) {
                    for (double length : lengths) {
                        double start = Math.max(0, Math.min(cable.lengthMetres() - length, middle - length / 2));
                        stretch(kind, start, Math.min(length, cable.lengthMetres() / 2), size, all);
                    }
                }
            }
        }
        return all;
    }

    private static double between(double least, double most, double size) {
        return least * Math.pow(most / least, size);
    }

    private static void point(EventKind kind, double at, double ohms, double size, List<Event> all) {
        switch (kind) {
            case SPLICE -> all.add(new Splice(ID, at, between(ohms * 2e-12, ohms * 5e-9, size), 0, 0.01));
            case CONNECTOR -> all.add(new Connector(ID, at, ohms * between(0.97, 0.3, size), 0.06, 0.01));
            case TAP -> all.add(new Tap(ID, at, ohms, 1, between(0.02e-12, 20e-12, size), 0));
            case CORRODED_JOINT ->
                all.add(new CorrodedJoint(ID, at, between(0.002 * ohms, 5 * ohms, size), OptionalDouble.empty()));
            case PARTIAL_OPEN ->
                all.add(new BrokenConductor(ID, at, OptionalDouble.of(between(0.002 * ohms, 50 * ohms, size))));
            case PARTIAL_SHORT ->
                all.add(new TouchingConductors(ID, at, OptionalDouble.of(between(200 * ohms, 0.01 * ohms, size))));
            default -> {}
        }
    }

    private static void stretch(EventKind kind, double start, double length, double size, List<Event> all) {
        for (Profile profile : List.of(Profile.FLAT, Profile.RAISED_COSINE)) {
            switch (kind) {
                case PINCH -> all.add(new Pinch(ID, start, length, between(0.02, 0.95, size), Profile.RAISED_COSINE));
                case GRADUAL_DAMAGE ->
                    all.add(new GradualDamage(ID, start, length, 1 - between(0.002, 0.6, size), profile));
                case SPREAD_PAIR -> all.add(new SpreadPair(ID, start, length, 1 + between(0.01, 3, size), profile));
                case OFF_CENTRE ->
                    all.add(new OffCentreCore(
                            ID, start, length, between(0.02, 0.9, size), profile, OptionalDouble.empty()));
                case WATER ->
                    all.add(new WaterIngress(
                            ID,
                            start,
                            length,
                            start,
                            WaterDistribution.MAXWELL_GARNETT,
                            between(0.001, 0.6, size),
                            new Water(10, 0.02),
                            0));
                default -> {}
            }
        }
    }
}
