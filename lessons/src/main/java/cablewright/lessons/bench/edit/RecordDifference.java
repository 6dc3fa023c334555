// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import java.util.OptionalDouble;

/**
 * One thing in which drawings and cable differ.
 *
 * @param what in which way
 * @param subject name of the item or event; empty where length, end or a change of cable is meant
 * @param drawnMetres where the drawing puts it, or the length that it gives [m]; absent where it says nothing
 * @param trueMetres where it lies, or the length that there is [m]; absent where there is nothing
 */
public record RecordDifference(What what, String subject, OptionalDouble drawnMetres, OptionalDouble trueMetres) {

    /** The ways in which drawings are wrong. */
    public enum What {
        /** It lies elsewhere. */
        PLACE,
        /** Something of another kind lies there. */
        KIND,
        /** It is drawn, and nothing lies there. */
        NEVER_BUILT,
        /** Hardware lies there and is not drawn. */
        NOT_DRAWN,
        /** The cable is longer or shorter. */
        LENGTH,
        /** The line ends in something else. */
        END
    }
}
