// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import java.util.Optional;

/** Flags as the pointer takes hold of them on the trace track. */
final class FlagMarkerGrips implements Grips {

    private final TraceTrack track;
    private final FlagMarkerActions actions;

    FlagMarkerGrips(TraceTrack track, FlagMarkerActions actions) {
        this.track = track;
        this.actions = actions;
    }

    @Override
    public Optional<Grip> at(double x, double y) {
        return track.flags().at(x, y).map(staff -> new Grip() {
            @Override
            public void pressed(boolean beside) {
                actions.select(staff.marker().letter());
            }

            @Override
            public void dragged(double metres) {
                actions.drag(staff.marker().letter(), staff.second(), metres);
            }

            @Override
            public void dropped() {
                actions.drop();
            }
        });
    }

    @Override
    public Optional<Grip> begun(double metres) {
        return actions.begin(metres).map(letter -> new Grip() {
            @Override
            public void pressed(boolean beside) {
                actions.select(letter);
            }

            @Override
            public void dragged(double there) {
                actions.drag(letter, true, there);
            }

            @Override
            public void dropped() {
                actions.drop();
            }
        });
    }

    @Override
    public void placed(double metres) {
        actions.place(metres);
    }
}
