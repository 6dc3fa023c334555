// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.lattice;

import cablewright.simulator.explanation.attribution.WavePath;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a lattice diagram shows, whatever draws it: the cable cut into strips side by side, with each branch beside its
 * joint, and on them the ways of a wave. Lengths are in metres and times in seconds; texts are written already.
 *
 * @param title what it shows
 * @param caption what it says, and what is left out
 * @param strips the cable from the end tested on, each branch where it leaves
 * @param places where the wave may turn
 * @param rays the lines that the wave took, the weakest first
 * @param echoes what comes home, in the order of arrival
 * @param bumps the extrema of the trace
 * @param words what the columns beside it are called: where the trace shows an echo, and its height
 * @param unit how many of the unit shown make a metre, and its sign
 * @param lastSeconds how far in time it goes [s]
 */
public record Lattice(
        String title,
        String caption,
        List<Strip> strips,
        List<Place> places,
        List<Ray> rays,
        List<Echo> echoes,
        List<Bump> bumps,
        List<String> words,
        Unit unit,
        double lastSeconds) {

    /** Copies the lists. */
    public Lattice {
        strips = List.copyOf(strips);
        places = List.copyOf(places);
        rays = List.copyOf(rays);
        echoes = List.copyOf(echoes);
        bumps = List.copyOf(bumps);
        words = List.copyOf(words);
    }

    /**
     * A unit of length.
     *
     * @param perMetre how many make a metre
     * @param symbol its sign
     */
    public record Unit(double perMetre, String symbol) {}

    /**
     * A stretch of the line or of a branch.
     *
     * @param branchIds names of the events by which the branch leaves; empty for the line itself
     * @param name what is written over a branch; empty over the line itself
     * @param fromMetres where it begins, on the measure of its own cable [m]
     * @param toMetres where it ends [m]
     */
    public record Strip(List<String> branchIds, String name, double fromMetres, double toMetres) {

        /** Copies the list. */
        public Strip {
            branchIds = List.copyOf(branchIds);
        }

        double lengthMetres() {
            return toMetres - fromMetres;
        }

        boolean isBranch() {
            return !branchIds.isEmpty();
        }

        boolean has(List<String> ids, double metres) {
            return branchIds.equals(ids) && metres >= fromMetres - 1e-9 && metres <= toMetres + 1e-9;
        }
    }

    /**
     * A labelled place.
     *
     * @param strip on which strip, from 0
     * @param metres where [m]
     * @param name what is there
     */
    public record Place(int strip, double metres, String name) {}

    /**
     * A line that the wave took.
     *
     * @param strip on which strip, from 0
     * @param fromMetres where it set out [m]
     * @param toMetres where it came to [m]
     * @param fromSeconds when [s]
     * @param toSeconds when it came there [s]
     * @param volts how high it was there, for an outgoing wave of 1 V [V]
     * @param turns how often it had turned before
     * @param echoes which echoes took it, by their places in the list
     */
    public record Ray(
            int strip,
            double fromMetres,
            double toMetres,
            double fromSeconds,
            double toSeconds,
            double volts,
            int turns,
            Set<Integer> echoes) {

        /** Copies the set. */
        public Ray {
            echoes = Set.copyOf(echoes);
        }

        boolean isGhost() {
            return turns > 1;
        }
    }

    /**
     * What comes home.
     *
     * @param path the path
     * @param shown where the trace shows it
     * @param height how high it is
     * @param way which way it took
     */
    public record Echo(WavePath path, String shown, String height, String way) {}

    /**
     * An extremum of the trace.
     *
     * @param shownMetres where the trace shows it [m]
     * @param echoes those that have a share in it and are drawn, by their places in the list
     * @param description what it is and whose
     */
    public record Bump(double shownMetres, Set<Integer> echoes, String description) {

        /** Copies the set. */
        public Bump {
            echoes = Set.copyOf(echoes);
        }
    }

    /**
     * Finds the extremum that a trace shows nearest to a distance.
     *
     * @param shownMetres the distance [m]
     * @param withinMetres how near it must be [m]
     * @return the extremum; empty if none is so near
     */
    public Optional<Bump> bumpNear(double shownMetres, double withinMetres) {
        return bumps.stream()
                .filter(bump -> Math.abs(bump.shownMetres() - shownMetres) <= withinMetres)
                .min(Comparator.comparingDouble(bump -> Math.abs(bump.shownMetres() - shownMetres)));
    }
}
