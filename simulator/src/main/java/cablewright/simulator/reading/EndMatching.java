// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Tries each time from end to end that a pair of candidates, or an end's echo, suggests, and keeps the best. */
final class EndMatching {

    /** By how many standard uncertainties a pair may miss. */
    private static final double ALLOWED = 3;
    /** What dispersion may add, as a share of the time: the ends meet an event through different lengths of cable. */
    private static final double DISPERSION = 0.003;
    /** What an echo that comes later than the end counts against a time: it can only be a ghost. */
    private static final double TOO_LATE = 0.5;
    /** Height from which an echo is taken to hide what lies behind (common practice, no source). */
    private static final double WALL_VOLTS = 0.2;

    private final List<CandidateEvent> near;
    private final List<CandidateEvent> far;
    private final Optional<Measured> known;

    EndMatching(List<CandidateEvent> near, List<CandidateEvent> far, Optional<Measured> known) {
        this.near = ordered(near);
        this.far = ordered(far);
        this.known = known;
    }

    private static List<CandidateEvent> ordered(List<CandidateEvent> candidates) {
        List<CandidateEvent> ordered = new ArrayList<>(candidates);
        ordered.sort(Comparator.comparingDouble(candidate -> candidate.seconds().value()));
        return ordered;
    }

    private record Pair(CandidateEvent near, CandidateEvent far) {}

    /** A time with what agrees on it. */
    private record Hypothesis(
            double seconds,
            List<Pair> pairs,
            Optional<CandidateEvent> nearEnd,
            Optional<CandidateEvent> farEnd,
            double score) {

        int agreements() {
            return pairs.size() + (nearEnd.isPresent() ? 1 : 0) + (farEnd.isPresent() ? 1 : 0);
        }
    }

    MergedReading merged() {
        Hypothesis best = null;
        for (double seconds : suggested()) {
            Hypothesis refined = hypothesis(hypothesis(seconds).seconds());
            if (refined.agreements() > 0
                    && isAllowed(refined.seconds())
                    && (best == null || refined.score() > best.score())) {
                best = refined;
            }
        }
        return best == null
                ? new MergedReading(Optional.empty(), 0, Optional.empty(), Optional.empty(), apart())
                : merged(best);
    }

    private boolean isAllowed(double seconds) {
        return known.isEmpty()
                || Math.abs(seconds - known.get().value())
                        <= ALLOWED * known.get().uncertainty() + 2 * DISPERSION * seconds;
    }

    /** Times to try: the last things of both ends as one first, so that it is kept where nothing else is better. */
    private List<Double> suggested() {
        List<Double> times = new ArrayList<>();
        if (!near.isEmpty() && !far.isEmpty()) {
            times.add(time(near.get(near.size() - 1)) + time(far.get(far.size() - 1)));
        }
        near.forEach(candidate -> times.add(time(candidate)));
        far.forEach(candidate -> times.add(time(candidate)));
        near.forEach(a -> far.forEach(b -> times.add(time(a) + time(b))));
        return times;
    }

    private static double time(CandidateEvent candidate) {
        return candidate.seconds().value();
    }

    private Hypothesis hypothesis(double seconds) {
        List<Pair> pairs = pairs(seconds);
        Optional<CandidateEvent> nearEnd = closest(near, seconds);
        Optional<CandidateEvent> farEnd = closest(far, seconds);
        double sum = 0;
        double weights = 0;
        for (Pair pair : pairs) {
            Measured both = pair.near().seconds().plus(pair.far().seconds());
            sum += both.value() / squared(both.uncertainty());
            weights += 1 / squared(both.uncertainty());
        }
        for (Optional<CandidateEvent> end : List.of(nearEnd, farEnd)) {
            if (end.isPresent()) {
                Measured one = end.get().seconds();
                sum += one.value() / squared(one.uncertainty());
                weights += 1 / squared(one.uncertainty());
            }
        }
        int agreements = pairs.size() + (nearEnd.isPresent() ? 1 : 0) + (farEnd.isPresent() ? 1 : 0);
        double score = agreements - TOO_LATE * (later(near, seconds) + later(far, seconds));
        return new Hypothesis(weights == 0 ? seconds : sum / weights, pairs, nearEnd, farEnd, score);
    }

    private static double squared(double uncertainty) {
        return Math.max(uncertainty * uncertainty, 1e-30);
    }

    private static double doubt(CandidateEvent candidate, double seconds) {
        return ALLOWED * candidate.seconds().uncertainty() + DISPERSION * seconds;
    }

    private static Optional<CandidateEvent> closest(List<CandidateEvent> candidates, double seconds) {
        return candidates.stream()
                .filter(candidate -> Math.abs(time(candidate) - seconds) <= doubt(candidate, seconds))
                .min(Comparator.comparingDouble(candidate -> Math.abs(time(candidate) - seconds)));
    }

    private static long later(List<CandidateEvent> candidates, double seconds) {
        return candidates.stream()
                .filter(candidate -> time(candidate) > seconds + doubt(candidate, seconds))
                .count();
    }

    /** Pairs of candidates before the ends, the best first, each candidate once. */
    private List<Pair> pairs(double seconds) {
        List<Pair> possible = new ArrayList<>();
        for (CandidateEvent a : near) {
            for (CandidateEvent b : far) {
                double allowed = ALLOWED * a.seconds().plus(b.seconds()).uncertainty() + DISPERSION * seconds;
                boolean between = time(a) < seconds - doubt(a, seconds) && time(b) < seconds - doubt(b, seconds);
                if (between && Math.abs(time(a) + time(b) - seconds) <= allowed) {
                    possible.add(new Pair(a, b));
                }
            }
        }
        possible.sort(Comparator.comparingDouble(pair -> Math.abs(time(pair.near()) + time(pair.far()) - seconds)));
        List<Pair> pairs = new ArrayList<>();
        for (Pair pair : possible) {
            if (pairs.stream()
                    .noneMatch(taken ->
                            taken.near().equals(pair.near()) || taken.far().equals(pair.far()))) {
                pairs.add(pair);
            }
        }
        return pairs;
    }

    private MergedReading merged(Hypothesis best) {
        double weights = 0;
        for (Pair pair : best.pairs()) {
            weights +=
                    1 / squared(pair.near().seconds().plus(pair.far().seconds()).uncertainty());
        }
        for (Optional<CandidateEvent> end : List.of(best.nearEnd(), best.farEnd())) {
            weights +=
                    end.map(echo -> 1 / squared(echo.seconds().uncertainty())).orElse(0.0);
        }
        Measured whole = new Measured(best.seconds(), Math.sqrt(1 / weights));
        List<MergedEvent> events = new ArrayList<>();
        for (Pair pair : best.pairs()) {
            Measured mirrored = whole.minus(pair.far().seconds());
            events.add(new MergedEvent(
                    Optional.of(pair.near()),
                    Optional.of(pair.far()),
                    mean(pair.near().seconds(), mirrored),
                    false));
        }
        double nearWall = wall(near);
        double farWall = wall(far);
        for (CandidateEvent a : near) {
            boolean open = best.nearEnd().filter(end -> end.equals(a)).isEmpty() && time(a) < whole.value();
            if (open && best.pairs().stream().noneMatch(pair -> pair.near().equals(a))) {
                boolean hidden = whole.value() - time(a) > farWall;
                events.add(new MergedEvent(Optional.of(a), Optional.empty(), a.seconds(), hidden));
            }
        }
        for (CandidateEvent b : far) {
            boolean open = best.farEnd().filter(end -> end.equals(b)).isEmpty() && time(b) < whole.value();
            if (open && best.pairs().stream().noneMatch(pair -> pair.far().equals(b))) {
                boolean hidden = whole.value() - time(b) > nearWall;
                events.add(new MergedEvent(Optional.empty(), Optional.of(b), whole.minus(b.seconds()), hidden));
            }
        }
        events.sort(Comparator.comparingDouble(event -> event.nearSeconds().value()));
        return new MergedReading(Optional.of(whole), best.agreements(), best.nearEnd(), best.farEnd(), events);
    }

    /** When the strongest echo comes back, if it is so strong that little passes; else never. */
    private static double wall(List<CandidateEvent> candidates) {
        return candidates.stream()
                .filter(candidate -> Math.abs(candidate.heightVolts().value()) >= WALL_VOLTS)
                .max(Comparator.comparingDouble(
                        candidate -> Math.abs(candidate.heightVolts().value())))
                .map(EndMatching::time)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static Measured mean(Measured a, Measured b) {
        double wa = 1 / squared(a.uncertainty());
        double wb = 1 / squared(b.uncertainty());
        return new Measured((wa * a.value() + wb * b.value()) / (wa + wb), Math.sqrt(1 / (wa + wb)));
    }

    /** Nothing pairs: only the near end's own, since the others' place from there is not known. */
    private List<MergedEvent> apart() {
        return near.stream()
                .map(a -> new MergedEvent(Optional.of(a), Optional.empty(), a.seconds(), false))
                .toList();
    }
}
