// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.ui.drawing.axis.DistanceView;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Things of a track as the pointer takes hold of them; they keep their distance to the pointer while they are dragged. */
final class MarkGrips implements Grips {

    private static final double REACH = 9;

    private final Track track;
    private final Supplier<List<Mark>> marks;
    private final MarkActions actions;

    /** A thing with its place on the axis, a stretch or one point. */
    record Mark(String id, double fromMetres, double toMetres) {}

    MarkGrips(Track track, Supplier<List<Mark>> marks, MarkActions actions) {
        this.track = track;
        this.marks = marks;
        this.actions = actions;
    }

    @Override
    public Optional<Grip> at(double x, double y) {
        double reach = REACH * track.scale();
        return marks.get().stream()
                .filter(mark -> distance(mark, x) <= reach)
                .min(Comparator.comparingDouble((Mark mark) -> distance(mark, x))
                        .thenComparing(mark -> mark.toMetres() - mark.fromMetres()))
                .map(mark -> grip(mark, track.view().metres(x) - mark.fromMetres()));
    }

    private double distance(Mark mark, double x) {
        DistanceView view = track.view();
        return Math.max(0, Math.max(view.pixel(mark.fromMetres()) - x, x - view.pixel(mark.toMetres())));
    }

    private Grip grip(Mark mark, double hold) {
        return new Grip() {
            @Override
            public void pressed(boolean beside) {
                actions.select(mark.id(), beside);
            }

            @Override
            public void dragged(double metres) {
                actions.drag(mark.id(), metres - hold);
            }

            @Override
            public void dropped() {
                actions.drop();
            }
        };
    }

    @Override
    public void placed(double metres) {
        actions.place(metres);
    }
}
