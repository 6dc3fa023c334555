package cablewright.simulator.network;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.PutInLine;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.line.ComplexArray;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.material.PhysicalConstants;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A cable as a chain of scatterers with plain line between them, so that what comes back can be told path by path.
 *
 * <p>Elements of one event that touch, such as the parts of a tap or the steps of a pinch, are one scatterer. Its S11 is Γ
 * with its far side matched; S22 the same from behind; S21 S12 = (Γ(1) − S11)(1 − S22), with Γ(1) what comes back when
 * everything does behind it. The source's own impedance is the reference, so the port reflects only what meets it from
 * inside. A branch belongs to its scatterer with all that happens in it.
 */
public final class ScatteringChain {

    private static final long NUMBERS_KEPT = 30_000_000;

    private final LineTable table;
    private final double sourceOhms;
    private final Set<String> things = new HashSet<>();
    private final List<Scatterer> scatterers = new ArrayList<>();
    private final List<ComplexArray> legs = new ArrayList<>();
    private double seconds;

    private ScatteringChain(Cable cable, double sourceOhms, ProfileSteps steps, Frequencies frequencies) {
        this.table = new LineTable(frequencies, NUMBERS_KEPT);
        this.sourceOhms = sourceOhms;
        cable.events().stream().filter(PutInLine.class::isInstance).forEach(event -> things.add(event.id()));
        build(CableCompiler.compile(cable, steps));
    }

    /**
     * Takes a cable to pieces.
     *
     * @param cable the cable, seen from its near end
     * @param sourceOhms resistance of the source [Ω]
     * @param steps how finely profiles are taken
     * @param frequencies the frequencies at which its scatterers are told
     * @return the chain
     */
    public static ScatteringChain of(Cable cable, double sourceOhms, ProfileSteps steps, Frequencies frequencies) {
        return new ScatteringChain(cable, sourceOhms, steps, frequencies);
    }

    /**
     * Returns the scatterers in order, the port first and the end last.
     *
     * @return the scatterers
     */
    public List<Scatterer> scatterers() {
        return List.copyOf(scatterers);
    }

    /**
     * Returns what is left of a wave that went from one scatterer to the next and back.
     *
     * @param index which pair: from scatterer {@code index} to {@code index + 1}
     * @return e^(−2γl)
     */
    public ComplexArray leg(int index) {
        return legs.get(index);
    }

    private void build(Network network) {
        List<Element> pending = new ArrayList<>();
        Element.Line before = null;
        List<Element> elements = network.elements();
        for (int i = 0; i < elements.size(); i++) {
            if (!isLeg(elements, i)) {
                pending.add(elements.get(i));
                continue;
            }
            Element.Line leg = (Element.Line) elements.get(i);
            scatterers.add(between(before, pending, leg));
            seconds += 2 * secondsThrough(pending) + 2 * secondsThrough(List.of(leg));
            legs.add(table.roundTrip(leg.section(), leg.lengthMetres()));
            pending.clear();
            before = leg;
        }
        scatterers.add(end(before, pending, network.load()));
    }

    /** A line is a leg unless it is inside a thing, or one of the steps of a profile. */
    private boolean isLeg(List<Element> elements, int i) {
        if (!(elements.get(i) instanceof Element.Line)) {
            return false;
        }
        Element.Line line = (Element.Line) elements.get(i);
        if (line.madeBy().stream().anyMatch(things::contains)) {
            return false;
        }
        return line.madeBy().isEmpty() || !(isStepOf(line, elements, i - 1) || isStepOf(line, elements, i + 1));
    }

    private static boolean isStepOf(Element.Line line, List<Element> elements, int other) {
        if (other < 0 || other >= elements.size() || !(elements.get(other) instanceof Element.Line)) {
            return false;
        }
        return elements.get(other).madeBy().equals(line.madeBy());
    }

    private static double secondsThrough(List<Element> elements) {
        double sum = 0;
        for (Element element : elements) {
            if (element instanceof Element.Split) {
                sum += secondsThrough(((Element.Split) element).inside());
            } else if (element instanceof Element.Line) {
                Element.Line line = (Element.Line) element;
                sum += line.lengthMetres() / (line.section().velocityFraction() * PhysicalConstants.SPEED_OF_LIGHT);
            }
        }
        return sum;
    }

    private Scatterer between(Element.Line before, List<Element> inside, Element.Line after) {
        ComplexArray near = fromNear(before, inside, after, 0);
        ComplexArray far = fromFar(before, inside, after);
        ComplexArray whole = fromNear(before, inside, after, 1);
        int n = near.count();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int k = 0; k < n; k++) {
            double aRe = whole.re(k) - near.re(k);
            double aIm = whole.im(k) - near.im(k);
            double bRe = 1 - far.re(k);
            double bIm = -far.im(k);
            re[k] = aRe * bRe - aIm * bIm;
            im[k] = aRe * bIm + aIm * bRe;
        }
        Set<String> events = eventsOf(before, inside, after);
        Scatterer.Role role = before == null ? Scatterer.Role.PORT : Scatterer.Role.EVENT;
        if (before != null && events.isEmpty()) {
            role = Scatterer.Role.CABLE_CHANGE;
        }
        return new Scatterer(role, events, seconds, near, far, ComplexArray.takingOver(re, im));
    }

    /** Names of what lies inside and of what only one of the two sides has. */
    private static Set<String> eventsOf(Element.Line before, List<Element> inside, Element.Line after) {
        Set<String> events = new TreeSet<>();
        inside.forEach(element -> events.addAll(element.madeBy()));
        Set<String> left = before == null ? Set.of() : before.madeBy();
        Set<String> right = after == null ? Set.of() : after.madeBy();
        left.stream().filter(id -> !right.contains(id)).forEach(events::add);
        right.stream().filter(id -> !left.contains(id)).forEach(events::add);
        events.remove(CableCompiler.TEST_LEAD);
        return events;
    }

    private ComplexArray fromNear(Element.Line before, List<Element> inside, Element.Line after, double behind) {
        BackwardWave wave = BackwardWave.onLine(after.section(), behind, table);
        for (int i = inside.size() - 1; i >= 0; i--) {
            inside.get(i).accept(wave);
        }
        onto(before, wave);
        return wave.reflectionNow();
    }

    private ComplexArray fromFar(Element.Line before, List<Element> inside, Element.Line after) {
        BackwardWave wave = before == null
                ? BackwardWave.onOhms(sourceOhms, 0, table)
                : BackwardWave.onLine(before.section(), 0, table);
        for (Element element : inside) {
            turned(element).accept(wave);
        }
        CrossSection section = after.section();
        wave.onto(section);
        return wave.reflectionNow();
    }

    /** A divider met from its output sees nothing of the other leg. */
    private static Element turned(Element element) {
        if (element instanceof Element.Divider) {
            Element.Divider divider = (Element.Divider) element;
            return new Element.Divider(
                    divider.impedanceOhms(), divider.throughAmplitude(), 0, divider.leg(), divider.madeBy());
        }
        return element instanceof Element.Split ? ((Element.Split) element).turned() : element;
    }

    private void onto(Element.Line before, BackwardWave wave) {
        if (before == null) {
            wave.onto(sourceOhms);
        } else {
            wave.onto(before.section());
        }
    }

    private Scatterer end(Element.Line before, List<Element> inside, Load load) {
        Network tail = new Network(before == null ? inside : withFront(before.section(), inside), load);
        BackwardWave wave = BackwardWave.through(tail, sourceOhms, table);
        onto(before, wave);
        int n = table.frequencies().count();
        ComplexArray nothing = ComplexArray.takingOver(new double[n], new double[n]);
        Set<String> events = new TreeSet<>();
        inside.forEach(element -> events.addAll(element.madeBy()));
        return new Scatterer(Scatterer.Role.END, events, seconds, wave.reflectionNow(), nothing, nothing);
    }

    private static List<Element> withFront(CrossSection section, List<Element> inside) {
        List<Element> all = new ArrayList<>();
        all.add(new Element.Line(section, 0, Set.of()));
        all.addAll(inside);
        return all;
    }
}
