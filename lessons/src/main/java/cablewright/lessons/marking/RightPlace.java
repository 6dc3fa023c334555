// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.LineMap;
import java.util.List;

/**
 * Where a place is right: on the cable, and on the trace up to where a perfect reader sees the edge.
 *
 * @param nearer where the true place begins
 * @param farther where it ends; the same for a thing at one place
 * @param reads when the trace passes half-way up or down the edge, from the last turn before it and from the level at which
 *     the wave is back [s]; empty where it shows none
 * @param lastSeconds when the echo has passed [s]; that of the place where there is none
 */
record RightPlace(LineMap.Place nearer, LineMap.Place farther, List<Double> reads, double lastSeconds) {

    static RightPlace at(LineMap.Place place) {
        return new RightPlace(place, place, List.of(), place.seconds());
    }

    /** Velocity at which times to the true place are its metres, over that of light; the other one where it lies at the port. */
    double rightFraction(double other) {
        double seconds = farther.seconds();
        return seconds > 0 ? farther.metres() / MarkingRules.metresThereAndBack(seconds, 1) : other;
    }

    /** The stretch of the trace on which it lies, at a set velocity. */
    Span shown(double velocityFraction) {
        Span front = new Span(
                MarkingRules.metresThereAndBack(nearer.seconds(), velocityFraction),
                MarkingRules.metresThereAndBack(farther.seconds(), velocityFraction));
        for (double read : reads) {
            front = front.with(MarkingRules.metresThereAndBack(read, velocityFraction));
        }
        return front;
    }

    /** The true place and where the trace shows it at the velocity that puts it right. */
    Span right(double velocityFraction) {
        return shown(velocityFraction).with(nearer.metres()).with(farther.metres());
    }

    /** Where a perfect reader puts it at a velocity. */
    double readMetres(double velocityFraction) {
        double middle = (nearer.seconds() + farther.seconds()) / 2;
        return MarkingRules.metresThereAndBack(reads.isEmpty() ? middle : reads.get(0), velocityFraction);
    }

    /** By how much the edge comes later than the wave from the place; negative where it comes earlier. */
    double lateSeconds() {
        double read = reads.isEmpty() ? nearer.seconds() : reads.get(0);
        return read > farther.seconds() ? read - farther.seconds() : Math.min(0, read - nearer.seconds());
    }

    /**
     * From here to there.
     *
     * @param from the lesser end [m]
     * @param to the greater end [m]
     */
    record Span(double from, double to) {

        Span with(double metres) {
            return new Span(Math.min(from, metres), Math.max(to, metres));
        }

        Span widened(double metres) {
            return new Span(from - metres, to + metres);
        }

        double distance(double metres) {
            return Math.max(0, Math.max(from - metres, metres - to));
        }

        boolean meets(Span other) {
            return from <= other.to && other.from <= to;
        }

        /** Share of what both cover together that both cover. */
        double overlap(Span other) {
            double both = Math.min(to, other.to) - Math.max(from, other.from);
            double all = Math.max(to, other.to) - Math.min(from, other.from);
            return all > 0 ? Math.max(0, both) / all : 0;
        }
    }
}
