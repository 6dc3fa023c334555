// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LengthOnCable;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.material.Water;

/**
 * Water in the cable: where it came in, and the stretch to which it has travelled.
 *
 * <p>Dielectric: {@link CrossSection#wet}. The same share of water gives very different impedances in different
 * pictures of where it lies, so the picture is part of the event and every explanation repeats it. Toward each
 * edge of the stretch the share can fade in drying edges; the entry point itself changes nothing electrically.
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param entryMetres where the water came in, within the stretch [m]
 * @param picture where in the cross-section the water lies
 * @param volumeFraction share of the dielectric's volume that is water, above 0 to 0.99
 * @param water the water's temperature and conductivity
 * @param dryingEdgeMetres length at each edge over which the share fades [m], 0 to half the stretch
 */
public record WaterIngress(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Between(least = 0, most = 2 * Cable.MOST_METRES) double entryMetres,
        WaterDistribution picture,
        @Above(floor = 0, most = 0.99) @Usual(from = 0.005, to = 0.6) double volumeFraction,
        Water water,
        @Between(least = 0, most = Cable.MOST_METRES / 2) double dryingEdgeMetres)
        implements LineCondition {

    /** Checks the ranges. */
    public WaterIngress {
        Require.components(
                WaterIngress.class,
                id,
                startMetres,
                lengthMetres,
                entryMetres,
                picture,
                volumeFraction,
                water,
                dryingEdgeMetres);
        Require.between("entryMetres", entryMetres, startMetres, startMetres + lengthMetres);
        Require.between("dryingEdgeMetres", dryingEdgeMetres, 0, lengthMetres / 2);
    }

    @Override
    public EventKind kind() {
        return EventKind.WATER;
    }

    @Override
    public WaterIngress movedTo(double newStartMetres) {
        double behind = Math.max(0, Math.min(lengthMetres, entryMetres - startMetres));
        double entry = newStartMetres == startMetres ? entryMetres : newStartMetres + behind;
        return new WaterIngress(
                id, newStartMetres, lengthMetres, entry, picture, volumeFraction, water, dryingEdgeMetres);
    }

    @Override
    public WaterIngress mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        double entry = Math.min(start + lengthMetres, Math.max(start, cableLengthMetres - entryMetres));
        return new WaterIngress(id, start, lengthMetres, entry, picture, volumeFraction, water, dryingEdgeMetres);
    }

    @Override
    public double depthAt(double along) {
        double fromEdge = Math.min(along, 1 - along) * lengthMetres;
        return fromEdge >= dryingEdgeMetres ? volumeFraction : volumeFraction * fromEdge / dryingEdgeMetres;
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return depth > 0 ? section.wet(picture, depth, water) : section;
    }

    @Override
    public double longestStepMetres() {
        return dryingEdgeMetres > 0 ? dryingEdgeMetres / Profile.STEPS : Double.POSITIVE_INFINITY;
    }

    @Override
    public int compositionOrder() {
        return 1;
    }

    @Override
    public <T> T accept(ConditionVisitor<T> visitor) {
        return visitor.waterIngress(this);
    }
}
