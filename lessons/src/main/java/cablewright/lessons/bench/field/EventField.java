// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

/** One thing about an event that can be changed on the Bench. */
public sealed interface EventField permits NumberField, ChoiceField {

    /**
     * Returns which thing it is.
     *
     * @return a key for its words, such as "depthFraction"
     */
    String key();
}
