// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.lookalike;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.Heat;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Cross;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.OneSideEarthed;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.material.Water;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * An event of any kind at a given place in any size, from barely there (0) to as much as the kind can be (1). Sizes spread
 * over the logarithm of the quantity that makes the kind; the ends of the ranges are common practice, no source.
 */
public final class KindAtPlace {

    /** Name of the event; no event of an exercise has it. */
    public static final String ID = "would-be";

    private static final double COLD_WATER_CELSIUS = 10;
    private static final double FRESH_WATER_SIEMENS = 0.02;
    private static final double PERIODS = 8;

    private final Cable cable;
    private final double startMetres;
    private final double lengthMetres;
    private final double ohms;
    private final Profile profile;

    /** For a thing at one place only the start counts; the length is that of a stretch. */
    KindAtPlace(Cable cable, double startMetres, double lengthMetres) {
        this(cable, startMetres, lengthMetres, Profile.FLAT);
    }

    KindAtPlace(Cable cable, double startMetres, double lengthMetres, Profile profile) {
        this.cable = cable;
        this.profile = profile;
        this.startMetres = startMetres;
        this.lengthMetres = Math.min(lengthMetres, Math.max(0.05, cable.lengthMetres() - startMetres));
        this.ohms = cable.runAt(startMetres).type().nominalImpedanceOhms();
    }

    /** The event; empty for a kind that has no size to choose, such as the end of the line. */
    Optional<Event> of(EventKind kind, double size) {
        return switch (kind) {
            case SPLICE -> Optional.of(new Splice(ID, startMetres, between(ohms * 2e-12, ohms * 5e-9, size), 0, 0.01));
            case CONNECTOR -> Optional.of(new Connector(ID, startMetres, ohms * between(0.97, 0.3, size), 0.06, 0.01));
            case TAP -> Optional.of(new Tap(ID, startMetres, ohms, 1, between(0.02e-12, 20e-12, size), 0));
            case LOAD_COIL ->
                Optional.of(new LoadCoil(ID, startMetres, between(1e-3, 0.088, size), between(0.1, 10, size), 0));
            case CORRODED_JOINT ->
                Optional.of(new CorrodedJoint(
                        ID, startMetres, between(0.002 * ohms, 5 * ohms, size), OptionalDouble.empty()));
            case PARTIAL_OPEN ->
                Optional.of(new BrokenConductor(
                        ID, startMetres, OptionalDouble.of(between(0.002 * ohms, 50 * ohms, size))));
            case PARTIAL_SHORT ->
                Optional.of(new TouchingConductors(
                        ID, startMetres, OptionalDouble.of(between(200 * ohms, 0.01 * ohms, size))));
            case ONE_SIDE_OPEN ->
                Optional.of(new OneSideOpen(ID, startMetres, OptionalDouble.of(between(1e-9, 5e-12, size))));
            case ONE_SIDE_EARTHED -> Optional.of(new OneSideEarthed(ID, startMetres, between(200 * ohms, 0.01, size)));
            case CROSS -> Optional.of(new Cross(ID, startMetres, between(200 * ohms, 0.01, size)));
            case OPEN -> Optional.of(new BrokenConductor(ID, startMetres, OptionalDouble.empty()));
            case SHORT -> Optional.of(new TouchingConductors(ID, startMetres, OptionalDouble.empty()));
            case BRIDGED_TAP -> Optional.of(new BridgedTap(ID, startMetres, branch(between(1, 200, size))));
            default -> stretch(kind, size);
        };
    }

    private Optional<Event> stretch(EventKind kind, double size) {
        return switch (kind) {
            case PINCH ->
                Optional.of(new Pinch(ID, startMetres, lengthMetres, between(0.02, 0.95, size), Profile.RAISED_COSINE));
            case WATER -> Optional.of(water(between(0.001, 0.6, size)));
            case OFF_CENTRE ->
                Optional.of(new OffCentreCore(
                        ID, startMetres, lengthMetres, between(0.02, 0.9, size), profile, OptionalDouble.empty()));
            case SPREAD_PAIR ->
                Optional.of(new SpreadPair(ID, startMetres, lengthMetres, 1 + between(0.01, 3, size), profile));
            case GRADUAL_DAMAGE ->
                Optional.of(new GradualDamage(ID, startMetres, lengthMetres, 1 - between(0.002, 0.6, size), profile));
            case SPLIT -> Optional.of(split(between(SplitShape.LEAST_PITCH, 5, size)));
            case UNEVENNESS ->
                Optional.of(new ImpedanceVariation(
                        ID,
                        startMetres,
                        lengthMetres,
                        between(0.001, 0.2, size),
                        lengthMetres / PERIODS,
                        OptionalLong.empty(),
                        false));
            case HEAT ->
                Optional.of(new Heat(
                        ID,
                        startMetres,
                        lengthMetres,
                        Cable.BASE_CELSIUS + between(2, 120, size),
                        Cable.BASE_CELSIUS,
                        Profile.RAISED_COSINE));
            default -> Optional.empty();
        };
    }

    private Event split(double pitch) {
        SplitShape shape = new SplitShape(SplitLayout.TWISTED, OptionalDouble.of(pitch));
        return new Split(ID, startMetres, lengthMetres, shape, true, NeighbourEnd.MATCHED, NeighbourEnd.MATCHED);
    }

    private Event water(double fraction) {
        return new WaterIngress(
                ID,
                startMetres,
                lengthMetres,
                startMetres,
                WaterDistribution.MAXWELL_GARNETT,
                fraction,
                new Water(COLD_WATER_CELSIUS, FRESH_WATER_SIEMENS),
                0);
    }

    private Cable branch(double metres) {
        return new Cable(
                "Branch", List.of(new Run(cable.runAt(startMetres).type(), metres)), List.of(), new FarEnd.Open());
    }

    /** Even steps of the size are even steps of the logarithm. */
    private static double between(double least, double most, double size) {
        return least * Math.pow(most / least, size);
    }
}
