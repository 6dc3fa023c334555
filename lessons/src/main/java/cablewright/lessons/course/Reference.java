// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.course;

import cablewright.simulator.check.Id;
import cablewright.simulator.check.Require;

/**
 * Refers to a lesson or a demonstration.
 *
 * @param id its name
 */
public record Reference(@Id String id) {

    /** Checks the name. */
    public Reference {
        Require.components(Reference.class, id);
    }
}
