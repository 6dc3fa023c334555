// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * What one velocity setting costs on a cable of several types.
 *
 * <p>A place behind runs of lengths l and velocities v arrives at t = Σ 2 l/v and is shown at v_set t/2 (physics of
 * distance: d = VoP c t/2). Between the ends of runs the error grows evenly, so that it is largest at one of them.
 *
 * @param runs the runs in order from the tested end, at least one
 */
public record SeveralVelocities(@Entries(least = 1) List<Run> runs) {

    private static final int HALVINGS = 200;

    /**
     * One run of one type of cable.
     *
     * @param lengthMetres its true length [m], above 0
     * @param velocityFraction its velocity over that of light, above 0 to 1
     */
    public record Run(@Above(floor = 0) double lengthMetres, @Above(floor = 0, most = 1) double velocityFraction) {
        /** Checks the ranges. */
        public Run {
            Require.components(Run.class, lengthMetres, velocityFraction);
        }
    }

    /**
     * Where the end of a run is and where it is shown.
     *
     * @param trueMetres true distance [m]
     * @param shownMetres distance as shown at the setting [m]
     */
    public record Cost(double trueMetres, double shownMetres) {
        /**
         * Returns the error of the shown distance.
         *
         * @return shown less true [m]
         */
        public double errorMetres() {
            return shownMetres - trueMetres;
        }
    }

    /** Copies the list and refuses an empty one. */
    public SeveralVelocities {
        Require.components(SeveralVelocities.class, runs);
        runs = List.copyOf(runs);
    }

    /**
     * Tells what a setting costs at the end of each run.
     *
     * @param setFraction velocity that is set, over that of light, above 0
     * @return one entry for each run, in order
     */
    public List<Cost> costs(double setFraction) {
        Require.above("setFraction", setFraction, 0);
        List<Cost> costs = new ArrayList<>();
        double trueMetres = 0;
        double lightMetres = 0;
        for (Run run : runs) {
            trueMetres += run.lengthMetres();
            lightMetres += run.lengthMetres() / run.velocityFraction();
            costs.add(new Cost(trueMetres, setFraction * lightMetres));
        }
        return costs;
    }

    /**
     * Returns the largest error of any place on the cable.
     *
     * @param setFraction velocity that is set, over that of light, above 0
     * @return largest |shown − true| [m]
     */
    public double worstErrorMetres(double setFraction) {
        return costs(setFraction).stream()
                .mapToDouble(cost -> Math.abs(cost.errorMetres()))
                .max()
                .orElseThrow();
    }

    /**
     * Returns the setting that shows the end of the cable where it is.
     *
     * @return Σ l / Σ (l/v), over that of light
     */
    public double fractionForTheEnd() {
        Cost end = costs(1).get(runs.size() - 1);
        return end.trueMetres() / end.shownMetres();
    }

    /**
     * Returns the setting whose largest error anywhere is smallest.
     *
     * @return velocity over that of light
     */
    public double fractionOfLeastError() {
        double low = runs.stream().mapToDouble(Run::velocityFraction).min().orElseThrow();
        double high = runs.stream().mapToDouble(Run::velocityFraction).max().orElseThrow();
        // The largest of several straight lines' sizes has one valley only.
        for (int i = 0; i < HALVINGS; i++) {
            double third = (high - low) / 3;
            if (worstErrorMetres(low + third) <= worstErrorMetres(high - third)) {
                high -= third;
            } else {
                low += third;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Tells the true place of a shown distance.
     *
     * @param shownMetres distance as shown [m], 0 or more
     * @param setFraction velocity that was set, over that of light, above 0
     * @return true distance [m]; beyond the last run it goes on at the last run's velocity
     */
    public double trueMetres(double shownMetres, double setFraction) {
        Require.between("shownMetres", shownMetres, 0, Double.MAX_VALUE);
        double trueStart = 0;
        double shownStart = 0;
        for (Cost cost : costs(setFraction)) {
            if (shownMetres <= cost.shownMetres()) {
                double share = (shownMetres - shownStart) / (cost.shownMetres() - shownStart);
                return trueStart + share * (cost.trueMetres() - trueStart);
            }
            trueStart = cost.trueMetres();
            shownStart = cost.shownMetres();
        }
        return trueStart
                + (shownMetres - shownStart) * runs.get(runs.size() - 1).velocityFraction() / setFraction;
    }
}
