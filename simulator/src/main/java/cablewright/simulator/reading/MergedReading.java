// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import cablewright.simulator.check.Require;
import java.util.List;
import java.util.Optional;

/**
 * The readings of one line from its two ends, laid over each other.
 *
 * <p>What is at one place comes back after t from the near end and after T − t from the far end, T the time to the other end
 * and back. T is that for which most candidates of the two ends pair, counting the echo of the line's own end where either
 * shows it; where nothing decides, the last thing that each end shows is taken for the same open or short. Signs are not
 * compared: a change of impedance has opposite ones from its two sides, a thing in the line the same.
 *
 * @param thereAndBackSeconds time to the other end and back on which the ends agree [s]; empty where nothing pairs
 * @param agreements how many pairs and end echoes agree on it; from 2 on it is more than a guess
 * @param nearEndEcho what the near end shows of the line's far end; empty where nothing
 * @param farEndEcho what the far end shows of the line's near end; empty where nothing
 * @param events what lies between, nearest to the near end first
 */
public record MergedReading(
        Optional<Measured> thereAndBackSeconds,
        int agreements,
        Optional<CandidateEvent> nearEndEcho,
        Optional<CandidateEvent> farEndEcho,
        List<MergedEvent> events) {

    /** Agreements from which the time is more than a guess. */
    public static final int SURE = 2;

    /** Copies the list. */
    public MergedReading {
        Require.components(MergedReading.class, thereAndBackSeconds, agreements, nearEndEcho, farEndEcho, events);
        events = List.copyOf(events);
    }

    /**
     * Merges two readings of which nothing else is known.
     *
     * @param near candidates from the near end
     * @param far candidates from the far end
     * @return the merged reading
     */
    public static MergedReading of(List<CandidateEvent> near, List<CandidateEvent> far) {
        return new EndMatching(near, far, Optional.empty()).merged();
    }

    /**
     * Merges two readings where the time from end to end is known, from length and velocity.
     *
     * @param near candidates from the near end
     * @param far candidates from the far end
     * @param thereAndBackSeconds time to the other end and back [s]
     * @return the merged reading; it agrees on a time that this one allows, or on none
     */
    public static MergedReading of(List<CandidateEvent> near, List<CandidateEvent> far, Measured thereAndBackSeconds) {
        Require.above("thereAndBackSeconds", thereAndBackSeconds.value(), 0);
        return new EndMatching(near, far, Optional.of(thereAndBackSeconds)).merged();
    }

    /**
     * Returns whether more than one thing says the same.
     *
     * @return whether at least {@value #SURE} pairs or end echoes agree
     */
    public boolean isSure() {
        return agreements >= SURE;
    }

    /**
     * Returns the length on which the ends agree.
     *
     * @param velocity velocity with its standard uncertainty
     * @return the length [m]; empty where the ends agree on nothing
     */
    public Optional<Measured> lengthMetres(VelocityFinding velocity) {
        return thereAndBackSeconds.map(velocity::metres);
    }

    /**
     * Finds the velocity from the two ends, where the length is known.
     *
     * @param lengthMetres length with its standard uncertainty [m], above 0
     * @return the velocity; empty where the ends agree on nothing
     */
    public Optional<VelocityFinding> velocity(Measured lengthMetres) {
        return thereAndBackSeconds.map(time -> VelocityFinding.fromKnownLength(lengthMetres, time));
    }

    /**
     * Returns where an event lies, by the share of the way at which the ends show it: no velocity enters, so that a wrong
     * setting moves nothing.
     *
     * @param event the event
     * @param lengthMetres known length with its standard uncertainty [m], above 0
     * @return distance from the near end [m]; empty where the ends agree on nothing
     */
    public Optional<Measured> metresByShare(MergedEvent event, Measured lengthMetres) {
        Require.above("lengthMetres", lengthMetres.value(), 0);
        return thereAndBackSeconds.map(whole -> {
            double share = event.nearSeconds().value() / whole.value();
            double doubt = Math.hypot(event.nearSeconds().uncertainty(), share * whole.uncertainty()) / whole.value();
            return new Measured(
                    share * lengthMetres.value(),
                    Math.hypot(share * lengthMetres.uncertainty(), doubt * lengthMetres.value()));
        });
    }

    /**
     * Says by how much the two ends differ on an event that both show.
     *
     * @param event the event
     * @return time by which their sum misses the agreed one, over the doubt of that sum; empty where one end alone shows it
     */
    public Optional<Double> mismatch(MergedEvent event) {
        if (!event.isSeenFromBoth() || thereAndBackSeconds.isEmpty()) {
            return Optional.empty();
        }
        Measured sum = event.near()
                .orElseThrow()
                .seconds()
                .plus(event.far().orElseThrow().seconds());
        return Optional.of((sum.value() - thereAndBackSeconds.get().value()) / sum.uncertainty());
    }
}
