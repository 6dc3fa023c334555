// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.lattice;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.attribution.Bump;
import cablewright.simulator.explanation.attribution.PathLeg;
import cablewright.simulator.explanation.attribution.WavePath;
import cablewright.ui.words.PathWords;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes lattice diagrams of what came back from a cable. */
public final class LatticeMaker {

    private static final int MOST_ECHOES = 24;
    private static final double AFTER_THE_LAST = 1.04;

    private final Cable cable;
    private final Cable tested;
    private final LineEnd end;
    private final Words words;
    private final List<Lattice.Strip> strips = new ArrayList<>();
    private final List<Lattice.Place> places = new ArrayList<>();

    /**
     * Prepares for a cable.
     *
     * @param cable the cable, with distances from its near end
     * @param end the end that is tested
     * @param words the words
     */
    public LatticeMaker(Cable cable, LineEnd end, Words words) {
        this.cable = cable;
        this.tested = cable.seenFrom(end);
        this.end = end;
        this.words = words;
    }

    /**
     * Makes the diagram of the highest paths.
     *
     * @param attribution the paths
     * @param leastVolts paths less high are left out [V]
     * @return the diagram
     */
    public Lattice of(Attribution attribution, double leastVolts) {
        strips.clear();
        places.clear();
        lay(
                tested,
                List.of(),
                "",
                -tested.testLead().map(TestLead::lengthMetres).orElse(0.0));
        List<WavePath> chosen = attribution.paths().stream()
                .filter(path ->
                        Math.abs(path.peakVolts()) >= leastVolts && !path.way().isEmpty())
                .sorted(Comparator.comparingDouble(path -> -Math.abs(path.peakVolts())))
                .limit(MOST_ECHOES)
                .sorted(Comparator.comparingDouble(WavePath::arrivalSeconds))
                .toList();
        double last =
                chosen.stream().mapToDouble(WavePath::arrivalSeconds).max().orElse(1e-9);
        double unit = words.quantities().unit().fromMetres(1);
        return new Lattice(
                say("lattice.title", cable.title(), words.end(end)),
                caption(attribution, chosen.size()),
                strips,
                places,
                rays(chosen),
                chosen.stream().map(this::echo).toList(),
                attribution.bumps().stream().map(bump -> bump(bump, chosen)).toList(),
                List.of(say("lattice.shown"), say("lattice.height")),
                new Lattice.Unit(unit, words.quantities().unit().symbol()),
                AFTER_THE_LAST * last);
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    private String caption(Attribution attribution, int drawn) {
        double share = Math.floor(1e4 * attribution.explainedEnergyShare()) / 100;
        return say(
                drawn < attribution.paths().size() ? "lattice.caption.some" : "lattice.caption.all",
                drawn,
                attribution.paths().size(),
                share);
    }

    private Lattice.Echo echo(WavePath path) {
        return new Lattice.Echo(
                path,
                words.quantities().length(path.shownMetres()),
                words.quantities().percent(path.peakVolts()),
                new PathWords(words, cable).description(path));
    }

    private Lattice.Bump bump(Bump bump, List<WavePath> chosen) {
        Set<Integer> echoes = new HashSet<>();
        for (Bump.Share share : bump.shares()) {
            int at = chosen.indexOf(share.path());
            if (at >= 0) {
                echoes.add(at);
            }
        }
        return new Lattice.Bump(
                bump.shownMetres(), echoes, say("lattice.bump", new PathWords(words, cable).bump(bump)));
    }

    /** Lays a cable out strip by strip, each branch after the stretch at whose end it leaves. */
    private void lay(Cable here, List<String> ids, String joint, double startMetres) {
        List<Event> events = here.events().stream()
                .sorted(Comparator.comparingDouble(Event::startMetres))
                .toList();
        String name = ids.isEmpty() ? "" : say("lattice.branch", joint);
        double from = startMetres;
        List<Event> waiting = new ArrayList<>();
        for (Event event : events) {
            waiting.add(event);
            Cable branch = branchOf(event);
            if (branch != null) {
                strip(ids, name, from, event.startMetres(), waiting);
                List<String> further = new ArrayList<>(ids);
                further.add(event.id());
                lay(branch, List.copyOf(further), words.quantities().shortLength(event.startMetres()), 0);
                from = event.startMetres();
            }
        }
        strip(ids, name, from, here.lengthMetres(), waiting);
        places.add(new Lattice.Place(strips.size() - 1, here.lengthMetres(), say("lattice.end")));
    }

    private void strip(List<String> ids, String name, double from, double to, List<Event> events) {
        for (Event event : events) {
            places.add(new Lattice.Place(strips.size(), event.startMetres(), words.kind(event.kind())));
        }
        events.clear();
        strips.add(new Lattice.Strip(ids, name, from, to));
    }

    private static Cable branchOf(Event event) {
        if (event instanceof BridgedTap tap) {
            return tap.branch();
        }
        boolean leg = event instanceof Splitter s && !s.inputAtFarSide();
        return leg ? ((Splitter) event).leg() : null;
    }

    private record Line(int strip, long from, long to, long at) {}

    /** The lines of all paths, those that several share but once; the weakest first. */
    private List<Lattice.Ray> rays(List<WavePath> paths) {
        Map<Line, Lattice.Ray> rays = new HashMap<>();
        for (int i = 0; i < paths.size(); i++) {
            int turns = 0;
            PathLeg before = null;
            for (PathLeg leg : paths.get(i).way()) {
                turns += before != null && isBackAgain(before, leg) ? 1 : 0;
                before = leg;
                int strip = stripOf(leg);
                Line line = new Line(
                        strip,
                        Math.round(1e6 * leg.fromMetres()),
                        Math.round(1e6 * leg.toMetres()),
                        Math.round(1e15 * leg.fromSeconds()));
                rays.merge(line, ray(leg, strip, turns, i), LatticeMaker::both);
            }
        }
        return rays.values().stream()
                .sorted(Comparator.comparingDouble(Lattice.Ray::volts)
                        .thenComparingDouble(Lattice.Ray::fromSeconds)
                        .thenComparingDouble(Lattice.Ray::fromMetres)
                        .thenComparingInt(Lattice.Ray::strip))
                .toList();
    }

    private static boolean isBackAgain(PathLeg before, PathLeg leg) {
        return before.branchIds().equals(leg.branchIds())
                && before.fromMetres() == leg.toMetres()
                && before.toMetres() == leg.fromMetres();
    }

    private static Lattice.Ray ray(PathLeg leg, int strip, int turns, int echo) {
        return new Lattice.Ray(
                strip,
                leg.fromMetres(),
                leg.toMetres(),
                leg.fromSeconds(),
                leg.toSeconds(),
                leg.volts(),
                turns,
                Set.of(echo));
    }

    private static Lattice.Ray both(Lattice.Ray one, Lattice.Ray other) {
        Set<Integer> echoes = new HashSet<>(one.echoes());
        echoes.addAll(other.echoes());
        return new Lattice.Ray(
                one.strip(),
                one.fromMetres(),
                one.toMetres(),
                one.fromSeconds(),
                one.toSeconds(),
                Math.max(one.volts(), other.volts()),
                Math.min(one.turns(), other.turns()),
                echoes);
    }

    private int stripOf(PathLeg leg) {
        double middle = (leg.fromMetres() + leg.toMetres()) / 2;
        for (int i = 0; i < strips.size(); i++) {
            if (strips.get(i).has(leg.branchIds(), middle)) {
                return i;
            }
        }
        throw new IllegalStateException("no strip of " + leg.branchIds() + " has " + middle + " m");
    }
}
