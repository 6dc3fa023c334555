// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

/** Why an event is not clear, in the order in which the reasons are given. */
public enum HiddenReason {
    /** It lies beyond a full open or short. */
    BEYOND_FULL_REFLECTION,
    /** The outgoing pulse, or the receiver's recovery from it, covers it. */
    BLIND_ZONE,
    /** The edge of another event lies within half a pulse. */
    MERGED,
    /** What else comes back there is too large beside it. */
    OVERSHADOWED,
    /** It stands less than three times above the noise. */
    BELOW_NOISE,
    /** It is smaller than a step of the converter. */
    BELOW_CONVERTER_STEP,
    /** It lies beyond the range that is shown. */
    BEYOND_RANGE,
    /** It changes nothing that a reflection could show. */
    NO_REFLECTION
}
