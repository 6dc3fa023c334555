// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.EventEchoes;
import cablewright.simulator.instrument.Trace;
import java.util.List;
import java.util.Optional;

/**
 * Finds the size in which another kind of event comes nearest to what a trace shows: least squares of the two noise-free
 * traces where the true event shows, over a row of sizes and then between the two beside the best (golden section, Kiefer,
 * Proc. Amer. Math. Soc. 4, 502 (1953), from memory). A kind that goes the other way first comes nearest where it is nothing
 * at all, which shows nothing; its size is taken so that it is as high as what is there.
 */
final class KindFit {

    private static final int COARSE = 8;
    private static final int FINE = 6;
    private static final double OTHER_WAY = 1e9;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final EventEchoes echoes;
    private final String trueId;
    private final List<EventEcho> shows;
    private final double marginMetres;

    KindFit(EventEchoes echoes, String trueId, List<EventEcho> shows) {
        this.echoes = echoes;
        this.trueId = trueId;
        this.shows = shows;
        this.marginMetres = echoes.trace().settings().halfPulseMetres();
    }

    private record Tried(Event event, EventEchoes.Would would, double misfit) {}

    /** Fits a kind; empty where it can't be on this cable or shows nothing within the range. */
    Optional<KindComparison> fit(EventKind kind, KindAtPlace place) {
        try {
            return best(kind, place).flatMap(tried -> told(kind, tried));
        } catch (IllegalArgumentException e) {
            // The cross-section refuses the kind, as coax does a spread pair: nothing can be laid over the trace.
            return Optional.empty();
        }
    }

    private Optional<Tried> best(EventKind kind, KindAtPlace place) {
        Optional<Tried> best = Optional.empty();
        double at = 0;
        for (int i = 0; i <= COARSE; i++) {
            double size = (double) i / COARSE;
            Optional<Tried> tried = tried(kind, place, size);
            if (isBetter(tried, best)) {
                best = tried;
                at = size;
            }
        }
        return best.isEmpty() || !hasSizes(kind) ? best : refined(kind, place, at, best.get());
    }

    private static boolean hasSizes(EventKind kind) {
        return kind != EventKind.OPEN && kind != EventKind.SHORT;
    }

    private Optional<Tried> refined(EventKind kind, KindAtPlace place, double at, Tried coarse) {
        double low = Math.max(0, at - 1.0 / COARSE);
        double high = Math.min(1, at + 1.0 / COARSE);
        Optional<Tried> best = Optional.of(coarse);
        for (int i = 0; i < FINE; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            Optional<Tried> a = tried(kind, place, left);
            Optional<Tried> b = tried(kind, place, right);
            best = isBetter(a, best) ? a : best;
            best = isBetter(b, best) ? b : best;
            if (isBetter(a, b)) {
                high = right;
            } else {
                low = left;
            }
        }
        return best;
    }

    private static boolean isBetter(Optional<Tried> one, Optional<Tried> other) {
        return one.isPresent()
                && (other.isEmpty() || one.get().misfit() < other.get().misfit());
    }

    private Optional<Tried> tried(EventKind kind, KindAtPlace place, double size) {
        return place.of(kind, size).map(event -> {
            EventEchoes.Would would = echoes.would(event, trueId);
            return new Tried(event, would, misfit(would));
        });
    }

    private double misfit(EventEchoes.Would would) {
        double first = would.echoes().isEmpty() ? 0 : would.echoes().get(0).firstVolts();
        double truth = shows.get(0).firstVolts();
        return first * truth >= 0
                ? misfit(would.trace())
                : OTHER_WAY + Math.abs(Math.log(Math.abs(first) / Math.abs(truth)));
    }

    private double misfit(Trace other) {
        double sum = 0;
        for (int i = first(); i <= last(); i++) {
            double left = other.volts(i) - echoes.trace().volts(i);
            sum += left * left;
        }
        return sum;
    }

    private int first() {
        double from =
                shows.stream().mapToDouble(EventEcho::showsFromMetres).min().orElse(0);
        return echoes.trace().indexNear(from - marginMetres);
    }

    private int last() {
        double to = shows.stream().mapToDouble(EventEcho::showsToMetres).max().orElse(0);
        return echoes.trace().indexNear(to + marginMetres);
    }

    private Optional<KindComparison> told(EventKind kind, Tried tried) {
        if (tried.would().echoes().isEmpty()) {
            return Optional.empty();
        }
        int at = first();
        for (int i = first(); i <= last(); i++) {
            at = left(tried, i) > left(tried, at) ? i : at;
        }
        return Optional.of(new KindComparison(
                kind,
                tried.event(),
                tried.would().trace(),
                tried.misfit() >= OTHER_WAY,
                tried.would().echoes().get(0),
                left(tried, at),
                echoes.trace().metres(at),
                echoes.trace().noiseVolts()));
    }

    private double left(Tried tried, int index) {
        return Math.abs(tried.would().trace().volts(index) - echoes.trace().volts(index));
    }
}
