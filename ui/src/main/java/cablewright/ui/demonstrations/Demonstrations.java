// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import java.util.List;

/** All demonstrations. */
public final class Demonstrations {

    /** Name of the bundle that holds their words. */
    public static final String BUNDLE = "cablewright.ui.demonstrations.demonstrations";

    private Demonstrations() {}

    /**
     * Makes the demonstrations.
     *
     * @return all of them, in the order in which they build on each other
     */
    public static List<Demonstration> all() {
        return List.of(
                new SameEverywhere(),
                new DamageByDegrees(),
                new WidthAndSight(),
                new WrongVelocity(),
                new WhereWaterWent(),
                new Ghosts(),
                new ChainOrCable(),
                new EveryMetre(),
                new SplitAndResplit(),
                new FarAndBlunt());
    }
}
