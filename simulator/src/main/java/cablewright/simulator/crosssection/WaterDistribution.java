// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.material.MixingRule;
import java.util.Optional;

/**
 * How water lies in a cable's dielectric. The picture matters more than the amount: 5 % by volume in a 75 ohm foam coax
 * gives anything from 74 ohm (film under the shield) to 38 ohm (parallel bound).
 */
public enum WaterDistribution {
    /** Separate round drops, see {@link MixingRule#MAXWELL_GARNETT}. */
    MAXWELL_GARNETT(MixingRule.MAXWELL_GARNETT),
    /** Drops that join up, see {@link MixingRule#BRUGGEMAN}. */
    BRUGGEMAN(MixingRule.BRUGGEMAN),
    /** Joined wet space, see {@link MixingRule#LOOYENGA}. */
    LOOYENGA(MixingRule.LOOYENGA),
    /** Refractive indices add, see {@link MixingRule#CRIM}. */
    CRIM(MixingRule.CRIM),
    /** Least that any shape can do, see {@link MixingRule#SERIES_BOUND}. */
    SERIES_BOUND(MixingRule.SERIES_BOUND),
    /** Most that any shape can do, see {@link MixingRule#PARALLEL_BOUND}. */
    PARALLEL_BOUND(MixingRule.PARALLEL_BOUND),
    /** An even film between dielectric and shield of a coax, solved exactly in layers. */
    FILM_UNDER_SHIELD(null),
    /** An even film between dielectric and core of a coax, solved exactly in layers. */
    FILM_ON_CORE(null);

    private final MixingRule rule;

    WaterDistribution(MixingRule rule) {
        this.rule = rule;
    }

    /**
     * The mixing rule of a picture that mixes.
     *
     * @return the rule; empty for the two films
     */
    public Optional<MixingRule> rule() {
        return Optional.ofNullable(rule);
    }

    /**
     * Whether the water is a film.
     *
     * @return true for the two films
     */
    public boolean isFilm() {
        return rule == null;
    }
}
