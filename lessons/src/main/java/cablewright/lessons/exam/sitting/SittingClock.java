// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.function.LongSupplier;

/**
 * The time that a sitting has used. Within a run it goes by a counter that nobody can set, so that putting the machine's clock
 * back or forward changes nothing; by how much the machine's clock went wrong against the counter is added up. Between two
 * runs there is only the machine's clock: the time in between counts where it went forward.
 */
final class SittingClock {

    private static final double NANOS = 1e9;

    /** A clock that is slewed onto a time server stays within this [s]. */
    private static final double SLACK_SECONDS = 5;

    private final Clock wall;
    private final LongSupplier nanos;
    private final long startedNanos;
    private final Instant startedAt;
    private final double usedBefore;
    private final double jumpsBefore;

    private SittingClock(Clock wall, LongSupplier nanos, double usedBefore, double jumpsBefore) {
        this.wall = wall;
        this.nanos = nanos;
        this.startedNanos = nanos.getAsLong();
        this.startedAt = wall.instant();
        this.usedBefore = usedBefore;
        this.jumpsBefore = jumpsBefore;
    }

    static SittingClock begun(Clock wall, LongSupplier nanos) {
        return new SittingClock(wall, nanos, 0, 0);
    }

    /** Goes on after a stop: with the time that had been used when the sitting was last saved, and when that was. */
    static SittingClock takenUp(Clock wall, LongSupplier nanos, double used, Instant savedAt, double jumps) {
        double between = Duration.between(savedAt, wall.instant()).toMillis() / 1000.0;
        return between >= 0
                ? new SittingClock(wall, nanos, used + between, jumps)
                : new SittingClock(wall, nanos, used, jumps - between);
    }

    private double runSeconds() {
        return Math.max(0, nanos.getAsLong() - startedNanos) / NANOS;
    }

    /** Time used since the sitting began [s]. */
    double usedSeconds() {
        return usedBefore + runSeconds();
    }

    /** By how much the machine's clock went wrong, added up without sign [s]. */
    double jumpSeconds() {
        double off = Duration.between(startedAt, wall.instant()).toMillis() / 1000.0 - runSeconds();
        return jumpsBefore + (Math.abs(off) > SLACK_SECONDS ? Math.abs(off) : 0);
    }

    Instant now() {
        return wall.instant();
    }
}
