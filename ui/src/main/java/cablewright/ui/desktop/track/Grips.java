// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import java.util.Optional;

/** What a pointer can take hold of on a track. */
interface Grips {

    /** A track with nothing to take hold of. */
    Grips NONE = new Grips() {
        @Override
        public Optional<Grip> at(double x, double y) {
            return Optional.empty();
        }

        @Override
        public void placed(double metres) {
            // Nothing can be placed here.
        }
    };

    /** One thing that is taken hold of. */
    interface Grip {

        /** It was pressed on; another press beside it keeps what was selected before. */
        void pressed(boolean beside);

        /** The pointer carries it to a distance on the axis [m]. */
        void dragged(double metres);

        /** The pointer let go after a drag. */
        void dropped();
    }

    /** Returns what lies under the pointer. */
    Optional<Grip> at(double x, double y);

    /** The track was pressed with Shift where there is nothing: what the drag then makes, if anything. */
    default Optional<Grip> begun(double metres) {
        return Optional.empty();
    }

    /** The track was clicked twice where there is nothing. */
    void placed(double metres);
}
