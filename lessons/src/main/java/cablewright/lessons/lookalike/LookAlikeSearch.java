// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.lookalike;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.measurement.Measurement;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Finds the event of another kind that comes nearest to what a trace shows: the least of the largest difference over the
 * whole trace, over size, place and length; first over a grid, then from its three best points downhill (Nelder and Mead,
 * Computer Journal 7, 308 (1965), from memory).
 */
public final class LookAlikeSearch {

    private static final int SIZES = 8;
    private static final double[] LENGTHS_IN_HALF_PULSES = {0.1, 0.5, 1.5, 4};
    private static final double[] SHIFTS_IN_HALF_PULSES = {-0.4, -0.1, 0.1, 0.4};
    private static final double SHORTEST_METRES = 0.05;
    private static final double[] GRID_SHIFTS_IN_HALF_PULSES = {0, -0.25, 0.25};
    private static final double OWN_PULSES = 1.5;
    private static final int STARTS = 3;
    private static final int MOST_TRIES = 90;

    private final Cable cable;
    private final Cable bare;
    private final Event truth;
    private final Measurement measurement;
    private final Settings settings;
    private final LineEnd end;
    private final Trace shown;
    private final Trace without;
    private final double ownLastSeconds;
    private final int trueSign;

    /**
     * Prepares for one event at given settings.
     *
     * @param cable the cable, with distances from its near end
     * @param eventId the true event
     * @param instrument the instrument
     * @param settings what is set
     * @param end the end tested
     * @param memory what is remembered of lines
     */
    public LookAlikeSearch(
            Cable cable,
            String eventId,
            Instrument instrument,
            Settings settings,
            LineEnd end,
            PropagationCache memory) {
        this.cable = cable;
        this.bare = cable.withoutEvent(eventId);
        this.truth = cable.event(eventId).orElseThrow();
        this.measurement = Measurement.at(end, cable, instrument, memory);
        this.settings = settings;
        this.end = end;
        this.ownLastSeconds = ownLastSeconds(cable.seenFrom(end), eventId);
        this.shown = traceOf(cable);
        this.without = traceOf(bare);
        this.trueSign = (int) Math.signum(firstLobe(shown));
    }

    private double ownLastSeconds(Cable tested, String eventId) {
        double back = 2
                * CableProfile.of(tested)
                        .secondsTo(tested.event(eventId).orElseThrow().endMetres());
        return back
                + OWN_PULSES * settings.stimulus().settledSeconds()
                + 1 / measurement.instrument().bandwidthHertz();
    }

    private Trace traceOf(Cable other) {
        return measurement.of(other.seenFrom(end)).withoutNoise(settings);
    }

    /** One choice of what is free. */
    private record Choice(double size, double shift, double logLength, Profile profile) {}

    private record Tried(Choice choice, Event event, Trace trace, double left) {}

    /**
     * Looks for a kind.
     *
     * @param kind the kind
     * @return the event that comes nearest; empty where the kind can't be on this cable
     */
    public Optional<LookAlike> nearest(EventKind kind) {
        List<Tried> grid = grid(kind);
        if (grid.isEmpty()) {
            return Optional.empty();
        }
        grid.sort(Comparator.comparingDouble(Tried::left));
        boolean otherWay = grid.stream().allMatch(this::goesOtherWay) && goesOtherWayNearby(kind);
        Tried best = grid.get(0);
        for (int i = 0; !otherWay && i < Math.min(STARTS, grid.size()); i++) {
            Tried refined = refined(kind, grid.get(i));
            best = refined.left() < best.left() ? refined : best;
        }
        if (otherWay) {
            double height = Math.abs(firstLobe(shown));
            best = grid.stream()
                    .min(Comparator.comparingDouble(
                            tried -> Math.abs(Math.log(Math.abs(firstLobe(tried.trace())) / height))))
                    .orElseThrow();
        }
        return Optional.of(lookAlike(kind, best, otherWay));
    }

    private LookAlike lookAlike(EventKind kind, Tried best, boolean otherWay) {
        int at = 0;
        for (int i = 0; i < shown.count(); i++) {
            at = left(best.trace(), i) > left(best.trace(), at) ? i : at;
        }
        return new LookAlike(
                kind,
                best.event(),
                best.trace(),
                otherWay,
                firstLobe(best.trace()),
                left(best.trace(), at),
                shown.metres(at));
    }

    private double left(Trace other, int index) {
        return Math.abs(other.volts(index) - shown.volts(index));
    }

    private double left(Trace other) {
        double most = 0;
        for (int i = 0; i < shown.count(); i++) {
            most = Math.max(most, left(other, i));
        }
        return most;
    }

    /** Whether a kind goes the other way even if the place was misread a little. */
    private boolean goesOtherWayNearby(EventKind kind) {
        double length = Math.max(truth.endMetres() - truth.startMetres(), SHORTEST_METRES);
        for (double shift : SHIFTS_IN_HALF_PULSES) {
            for (int i = 0; i <= SIZES; i++) {
                Choice choice = new Choice((double) i / SIZES, shift, Math.log(length), Profile.FLAT);
                if (tried(kind, choice).filter(one -> !goesOtherWay(one)).isPresent()) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean goesOtherWay(Tried tried) {
        return firstLobe(tried.trace()) * trueSign < 0;
    }

    /**
     * Top of the first run of one sign that rises to half of the largest change about the event's own place; what it does to later
     * echoes counts for nothing.
     */
    private double firstLobe(Trace trace) {
        int count = 0;
        while (count < trace.count() && trace.seconds(count) <= ownLastSeconds) {
            count++;
        }
        double floor = 0;
        for (int i = 0; i < count; i++) {
            floor = Math.max(floor, Math.abs(trace.volts(i) - without.volts(i)) / 2);
        }
        double top = 0;
        for (int i = 0; i < count; i++) {
            double change = trace.volts(i) - without.volts(i);
            if (change * top < 0) {
                if (Math.abs(top) >= floor) {
                    return top;
                }
                top = 0;
            }
            top = Math.abs(change) > Math.abs(top) ? change : top;
        }
        return top;
    }

    private List<Tried> grid(EventKind kind) {
        List<Tried> tried = new ArrayList<>();
        double half = settings.halfPulseMetres();
        double own = truth.endMetres() - truth.startMetres();
        List<Double> lengths = new ArrayList<>();
        if (isStretch(kind)) {
            for (double share : LENGTHS_IN_HALF_PULSES) {
                lengths.add(share * half);
            }
        }
        lengths.add(Math.max(own, SHORTEST_METRES));
        List<Profile> profiles =
                hasProfile(kind) ? List.of(Profile.FLAT, Profile.RAISED_COSINE) : List.of(Profile.FLAT);
        for (double length : lengths) {
            for (Profile profile : profiles) {
                for (double shift : isStretch(kind) ? new double[] {0} : GRID_SHIFTS_IN_HALF_PULSES) {
                    for (int i = 0; i <= SIZES; i++) {
                        Choice choice = new Choice((double) i / SIZES, shift, Math.log(length), profile);
                        tried(kind, choice).ifPresent(tried::add);
                    }
                }
            }
        }
        return tried;
    }

    private static boolean isStretch(EventKind kind) {
        return switch (kind) {
            case PINCH, WATER, OFF_CENTRE, GRADUAL_DAMAGE, SPREAD_PAIR, SPLIT, UNEVENNESS, HEAT -> true;
            default -> false;
        };
    }

    private static boolean hasProfile(EventKind kind) {
        return kind == EventKind.GRADUAL_DAMAGE || kind == EventKind.SPREAD_PAIR || kind == EventKind.OFF_CENTRE;
    }

    private Tried refined(EventKind kind, Tried start) {
        Tried[] best = {start};
        MultivariateFunction misfit = point -> {
            Choice choice = new Choice(
                    Math.max(0, Math.min(1, point[0])),
                    point[1],
                    point.length > 2 ? point[2] : start.choice().logLength(),
                    start.choice().profile());
            Optional<Tried> tried = tried(kind, choice);
            tried.filter(one -> one.left() < best[0].left()).ifPresent(one -> best[0] = one);
            double outside = Math.max(0, Math.max(-point[0], point[0] - 1));
            return tried.map(Tried::left).orElse(1.0) + outside;
        };
        double[] from = isStretch(kind)
                ? new double[] {
                    start.choice().size(),
                    start.choice().shift(),
                    start.choice().logLength()
                }
                : new double[] {start.choice().size(), start.choice().shift()};
        double[] steps = isStretch(kind) ? new double[] {0.06, 0.1, 0.3} : new double[] {0.06, 0.1};
        try {
            new SimplexOptimizer(new SimpleValueChecker(1e-3, 1e-9))
                    .optimize(
                            new MaxEval(MOST_TRIES),
                            new ObjectiveFunction(misfit),
                            GoalType.MINIMIZE,
                            new InitialGuess(from),
                            new NelderMeadSimplex(steps));
        } catch (TooManyEvaluationsException e) {
            // The best point so far is kept; more tries would change it by little.
        }
        return best[0];
    }

    /** A choice laid on the cable; empty where it can't be there. The middle of a stretch stays where that of the truth is. */
    private Optional<Tried> tried(EventKind kind, Choice choice) {
        double length = Math.max(SHORTEST_METRES, Math.min(Math.exp(choice.logLength()), cable.lengthMetres() / 2));
        double middle = (truth.startMetres() + truth.endMetres()) / 2 + choice.shift() * settings.halfPulseMetres();
        double wanted = isStretch(kind) ? middle - length / 2 : middle;
        double start = Math.max(0, Math.min(cable.lengthMetres() - (isStretch(kind) ? length : 0), wanted));
        try {
            return new KindAtPlace(cable, start, length, choice.profile())
                    .of(kind, choice.size())
                    .map(event -> {
                        List<Event> events = new ArrayList<>(bare.events());
                        events.add(event);
                        Trace trace = traceOf(bare.withEvents(events));
                        return new Tried(choice, event, trace, left(trace));
                    });
        } catch (IllegalArgumentException e) {
            // The cross-section refuses the kind, as coax does a spread pair, or another event is in its way.
            return Optional.empty();
        }
    }
}
