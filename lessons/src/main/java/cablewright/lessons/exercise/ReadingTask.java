// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.simulator.instrument.Instrument;
import java.util.List;
import java.util.OptionalDouble;

/** What a trainee is shown of a line that is to be read. It never holds the cable: that is what is asked. */
public interface ReadingTask {

    /**
     * Returns the name within the lesson or paper.
     *
     * @return the id
     */
    String id();

    /**
     * Returns the title.
     *
     * @return one line
     */
    String title();

    /**
     * Returns who called and what they saw.
     *
     * @return Markdown
     */
    String brief();

    /**
     * Returns what can hurt someone at such work.
     *
     * @return the cautions, local codes last
     */
    List<Caution> cautions();

    /**
     * Returns what the drawings say.
     *
     * @return the as-built record
     */
    AsBuiltRecord record();

    /**
     * Returns what is used.
     *
     * @return the instrument
     */
    Instrument instrument();

    /**
     * Returns what is set when the task opens.
     *
     * @return permitted settings
     */
    Start start();

    /**
     * Returns what may be changed.
     *
     * @return the choices
     */
    Permitted permitted();

    /**
     * Returns how near a place must be to count in full.
     *
     * @return tolerance [m]; absent for the usual
     */
    OptionalDouble toleranceMetres();

    /**
     * Returns the seed of the receiver's noise.
     *
     * @return the seed
     */
    long noiseSeed();

    /**
     * Returns whether the end of the line need not be flagged.
     *
     * @return whether it is given
     */
    boolean endIsGiven();
}
