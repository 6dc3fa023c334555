// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.condition;

import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LengthOnCable;
import cablewright.simulator.cable.PlaceOnCable;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Readable;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Usual;
import cablewright.simulator.crosssection.CrossSection;
import java.util.OptionalLong;
import java.util.SplittableRandom;

/**
 * Unevenness of manufacture along a stretch: the impedance swings about its nominal value, regularly or at random.
 *
 * <p>Regular (no seed): relative change a · cos(2π z/p). The small reflections of each period add up at
 * f = v/(2p) and are lost among noise elsewhere: structural return loss (IEC 61196-1-112). Random (with a seed):
 * independent normal steps of standard deviation a (drawn within two of them), one for each correlation length p, joined by straight lines.
 *
 * @param id name within the cable
 * @param startMetres where the stretch begins, from the near end [m]
 * @param lengthMetres how long it is [m]
 * @param relativeAmplitude amplitude or standard deviation over nominal impedance, above 0 to 0.3
 * @param pitchMetres period, or correlation length of a random one [m], above 0; at most {@value #MOST_PERIODS} fit in
 *     the stretch
 * @param seed seed of a random one; absent for a regular one
 * @param fromFarEdge whether the swing is counted from the far edge of the stretch instead of the near one
 */
public record ImpedanceVariation(
        @Id String id,
        @PlaceOnCable double startMetres,
        @LengthOnCable double lengthMetres,
        @Above(floor = 0, most = 0.3) @Usual(from = 0.001, to = 0.2, byFactors = true) double relativeAmplitude,
        @LengthOnCable double pitchMetres,
        OptionalLong seed,
        boolean fromFarEdge)
        implements LineCondition {

    /** Most periods in one stretch. */
    public static final int MOST_PERIODS = 20_000;

    private static final int STEPS_PER_PERIOD = 8;
    private static final double WIDEST_SIGMAS = 2;

    /** Checks the ranges. */
    public ImpedanceVariation {
        Require.components(
                ImpedanceVariation.class,
                id,
                startMetres,
                lengthMetres,
                relativeAmplitude,
                pitchMetres,
                seed,
                fromFarEdge);
        if (lengthMetres / pitchMetres > MOST_PERIODS) {
            throw new IllegalArgumentException("pitchMetres is " + Readable.number(pitchMetres) + "; in "
                    + Readable.number(lengthMetres) + " m allowed is "
                    + Readable.number(lengthMetres / MOST_PERIODS) + " or more");
        }
    }

    @Override
    public EventKind kind() {
        return EventKind.UNEVENNESS;
    }

    @Override
    public ImpedanceVariation movedTo(double newStartMetres) {
        return new ImpedanceVariation(
                id, newStartMetres, lengthMetres, relativeAmplitude, pitchMetres, seed, fromFarEdge);
    }

    @Override
    public ImpedanceVariation mirrored(double cableLengthMetres) {
        double start = mirroredStartMetres(cableLengthMetres);
        return new ImpedanceVariation(id, start, lengthMetres, relativeAmplitude, pitchMetres, seed, !fromFarEdge);
    }

    @Override
    public double depthAt(double along) {
        double periods = (fromFarEdge ? 1 - along : along) * lengthMetres / pitchMetres;
        return 1 + relativeAmplitude * (seed.isPresent() ? random(periods) : Math.cos(2 * Math.PI * periods));
    }

    private double random(double periods) {
        long before = (long) Math.floor(periods);
        double share = periods - before;
        return (1 - share) * normal(before) + share * normal(before + 1);
    }

    private double normal(long index) {
        double drawn = new SplittableRandom(seed.getAsLong() + 0x9E3779B97F4A7C15L * index).nextGaussian();
        return Math.max(-WIDEST_SIGMAS, Math.min(WIDEST_SIGMAS, drawn));
    }

    @Override
    public CrossSection applyTo(CrossSection section, double depth) {
        return section.scaled(depth);
    }

    @Override
    public double longestStepMetres() {
        return pitchMetres / STEPS_PER_PERIOD;
    }

    @Override
    public int compositionOrder() {
        return 0;
    }

    @Override
    public <T> T accept(ConditionVisitor<T> visitor) {
        return visitor.impedanceVariation(this);
    }
}
