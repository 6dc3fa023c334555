// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

/** What the trace does at a candidate event. */
public enum CandidateShape {
    /** A pulse's echo of one lobe up, or a step that rises and stays. */
    UP("up"),
    /** A pulse's echo of one lobe down, or a step that falls and stays. */
    DOWN("down"),
    /** A lobe up and then one down, or a step that rises and comes back: something short that raises the impedance. */
    UP_AND_BACK("up-and-back"),
    /** A lobe down and then one up, or a step that falls and comes back: something short that lowers the impedance. */
    DOWN_AND_BACK("down-and-back"),
    /** A front several times as long as that of the pulse: the line changes over a stretch, or much loss lies before. */
    LONG("long");

    private final String id;

    CandidateShape(String id) {
        this.id = id;
    }

    /**
     * Returns the word that commands use.
     *
     * @return lower-case word with hyphens
     */
    public String id() {
        return id;
    }
}
