// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ElementVisitor;
import cablewright.simulator.circuit.ImpedanceFraction;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.kernel.ComplexArray;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The way back through a stretch that the line shares with a neighbour. It starts with what lies behind each of the two
 * circuits, goes through the lines in even and odd mode and through what is put in the line as a two-port before its own
 * circuit, and ends with the neighbour closed by what lies before it: Γ = S11 + S12 S21 Γn/(1 − S22 Γn).
 *
 * <p>At the front both circuits are told on the impedance of the first line inside as it would be unsplit.
 */
public final class SplitWave implements ElementVisitor<Void> {

    private static final int LINE = 0;
    private static final int NEIGHBOUR = 1;

    private final Element.Split split;
    private final LineTable table;
    private final int count;
    private final TwoCircuits both;
    private final ComplexArray reference;
    private final Deque<Station> stations = new ArrayDeque<>();
    private CrossSection on;
    private CrossSection modesOn;
    private final boolean wantLines;
    private double metresLeft;
    private double[] nearRe;
    private double[] nearIm;

    /**
     * A line inside, with what is needed to follow the wave over it.
     *
     * @param line the line
     * @param startMetres where it begins, from the start of the stretch [m]
     * @param even its even mode
     * @param odd its odd mode
     * @param end S at its far end, in modes
     * @param onward F from its near end, in modes, to that of the next line, in modes, or to the far side
     */
    record Station(
            Element.Line line,
            double startMetres,
            LineTable.Wave even,
            LineTable.Wave odd,
            ComplexArray[] end,
            ComplexArray[] onward) {}

    private SplitWave(Element.Split split, LineTable table, boolean wantLines) {
        this.split = split;
        this.table = table;
        this.count = table.frequencies().count();
        this.both = new TwoCircuits(count);
        this.wantLines = wantLines;
        this.reference = table.wave(first().section()).impedance();
        this.metresLeft = split.lengthMetres();
    }

    private Element.Line first() {
        return lines().get(0);
    }

    public static Element.Line first(Element.Split split) {
        return lines(split).get(0);
    }

    public static Element.Line last(Element.Split split) {
        List<Element.Line> lines = lines(split);
        return lines.get(lines.size() - 1);
    }

    private List<Element.Line> lines() {
        return lines(split);
    }

    private static List<Element.Line> lines(Element.Split split) {
        List<Element.Line> lines = new ArrayList<>();
        for (Element element : split.inside()) {
            if (element instanceof Element.Line line) {
                lines.add(line);
            }
        }
        return lines;
    }

    /** Goes back through a stretch; the wave behind it must be on the impedance of its last line. */
    static SplitWave through(Element.Split split, ReflectionRecursion behind, LineTable table, boolean wantLines) {
        SplitWave wave = new SplitWave(split, table, wantLines);
        wave.start(behind);
        for (int i = split.inside().size() - 1; i >= 0; i--) {
            split.inside().get(i).accept(wave);
        }
        wave.arrive();
        return wave;
    }

    private void start(ReflectionRecursion behind) {
        on = last(split).section();
        if (split.neighbourFar().isEmpty()) {
            // The pair as made sees the load; the circuit of one pair against the other is open.
            boolean openIsEven = split.shape().pairAgainstPairIsEven();
            for (int k = 0; k < count; k++) {
                both.setReflection(openIsEven ? 1 : 0, k, behind.gRe(k), behind.gIm(k));
                both.setReflection(openIsEven ? 0 : 1, k, 1, 0);
            }
            both.restart(openIsEven);
            both.toCircuits();
            return;
        }
        ReflectionRecursion other =
                ReflectionRecursion.through(split.neighbourFar().get(), behind.zRe(0), table);
        other.onto(on);
        for (int k = 0; k < count; k++) {
            both.setReflection(LINE, k, behind.gRe(k), behind.gIm(k));
            both.setReflection(NEIGHBOUR, k, other.gRe(k), other.gIm(k));
        }
    }

    /** Puts both circuits from the impedance that they are on onto another line's. */
    private void onto(CrossSection section) {
        leaveModes();
        if (section.equals(on)) {
            return;
        }
        ComplexArray front = table.wave(section).impedance();
        ComplexArray behind = table.wave(on).impedance();
        for (int k = 0; k < count; k++) {
            both.step(LINE, k, front.re(k), front.im(k), behind.re(k), behind.im(k));
            both.step(NEIGHBOUR, k, front.re(k), front.im(k), behind.re(k), behind.im(k));
        }
        on = section;
    }

    private void enterModes(CrossSection section, LineTable.Wave even, LineTable.Wave odd) {
        onto(section);
        both.toModes();
        modeSteps(table.wave(section), even, odd, true);
        modesOn = section;
    }

    private void leaveModes() {
        if (modesOn != null) {
            SplitShape.Modes modes = split.shape().modes(modesOn);
            modeSteps(table.wave(modesOn), mode(modesOn, modes.even()), mode(modesOn, modes.odd()), false);
            both.toCircuits();
            modesOn = null;
        }
    }

    private void modeSteps(LineTable.Wave pair, LineTable.Wave even, LineTable.Wave odd, boolean in) {
        LineTable.Wave[] modes = {even, odd};
        for (int m = 0; m < 2; m++) {
            ComplexArray front = in ? modes[m].impedance() : pair.impedance();
            ComplexArray behind = in ? pair.impedance() : modes[m].impedance();
            for (int k = 0; k < count; k++) {
                both.step(m, k, front.re(k), front.im(k), behind.re(k), behind.im(k));
            }
        }
    }

    private LineTable.Wave mode(CrossSection section, double factor) {
        return table.wave(factor == 1 ? section : section.scaled(factor));
    }

    @Override
    public Void line(Element.Line element) {
        CrossSection section = element.section();
        SplitShape.Modes modes = split.shape().modes(section);
        LineTable.Wave even = mode(section, modes.even());
        LineTable.Wave odd = mode(section, modes.odd());
        if (modesOn == null || !modesOn.equals(section)) {
            enterModes(section, even, odd);
        }
        ComplexArray[] end = wantLines ? both.reflections() : null;
        both.through(
                LineTable.decay(even.propagation(), element.lengthMetres()),
                LineTable.decay(odd.propagation(), element.lengthMetres()));
        metresLeft -= element.lengthMetres();
        if (wantLines) {
            stations.addFirst(new Station(element, metresLeft, even, odd, end, both.forwards()));
            both.restart(false);
        }
        return null;
    }

    @Override
    public Void series(Element.Series element) {
        return lumped(new ImpedanceFraction(element.part()), true);
    }

    @Override
    public Void shunt(Element.Shunt element) {
        return lumped(new ImpedanceFraction(element.part()), false);
    }

    /** Series z: t11 = z/(2 + z), t21 = 2/(2 + z); shunt y: t11 = −y/(2 + y), t21 = 2/(2 + y), as fractions. */
    private Void lumped(ImpedanceFraction fraction, boolean series) {
        leaveModes();
        ComplexArray z = table.wave(on).impedance();
        for (int k = 0; k < count; k++) {
            fraction.at(table.sRe(k), table.sIm(k));
            double nRe = fraction.numeratorRe();
            double nIm = fraction.numeratorIm();
            double dRe = fraction.denominatorRe();
            double dIm = fraction.denominatorIm();
            if (series) {
                // z = n/(d Zr)
                part(k, nRe, nIm, dRe * z.re(k) - dIm * z.im(k), dRe * z.im(k) + dIm * z.re(k), 1);
            } else {
                // y = d Zr/n
                part(k, dRe * z.re(k) - dIm * z.im(k), dRe * z.im(k) + dIm * z.re(k), nRe, nIm, -1);
            }
        }
        return null;
    }

    /** A part of u/w in units of the reference: t11 = sign u/(2w + u), t21 = 2w/(2w + u). */
    private void part(int k, double uRe, double uIm, double wRe, double wIm, int sign) {
        double nRe = 2 * wRe + uRe;
        double nIm = 2 * wIm + uIm;
        double size = nRe * nRe + nIm * nIm;
        double rRe = (uRe * nRe + uIm * nIm) / size;
        double rIm = (uIm * nRe - uRe * nIm) / size;
        double r = sign;
        both.twoPort(LINE, k, r * rRe, r * rIm, 1 - rRe, -rIm, 1 - rRe, -rIm, r * rRe, r * rIm);
    }

    @Override
    public Void lineBreak(Element.Break element) {
        return cut(1);
    }

    @Override
    public Void contact(Element.Contact element) {
        return cut(-1);
    }

    private Void cut(double reflection) {
        leaveModes();
        for (int k = 0; k < count; k++) {
            both.twoPort(LINE, k, reflection, 0, 0, 0, 0, 0, reflection, 0);
        }
        return null;
    }

    @Override
    public Void branch(Element.Branch element) {
        leaveModes();
        ComplexArray z = table.wave(on).impedance();
        ReflectionRecursion other = ReflectionRecursion.through(element.branch(), z.re(0), table);
        for (int k = 0; k < count; k++) {
            // y = Zr (1 − Γ)/(Zb (1 + Γ))
            double aRe = 1 - other.gRe(k);
            double aIm = -other.gIm(k);
            double bRe = 1 + other.gRe(k);
            double bIm = other.gIm(k);
            part(
                    k,
                    aRe * z.re(k) - aIm * z.im(k),
                    aRe * z.im(k) + aIm * z.re(k),
                    bRe * other.zRe(k) - bIm * other.zIm(k),
                    bRe * other.zIm(k) + bIm * other.zRe(k),
                    -1);
        }
        return null;
    }

    @Override
    public Void divider(Element.Divider element) {
        throw new IllegalArgumentException("a splitter stands within a split; put it before or after");
    }

    @Override
    public Void split(Element.Split element) {
        throw new IllegalArgumentException("a split lies within another; a pair is split from one neighbour at a time");
    }

    /** Closes the neighbour by what lies before it. */
    private void arrive() {
        onto(first().section());
        ReflectionRecursion before = ReflectionRecursion.through(split.neighbourNear(), reference.re(0), table);
        before.onto(first().section());
        nearRe = new double[count];
        nearIm = new double[count];
        for (int k = 0; k < count; k++) {
            nearRe[k] = before.gRe(k);
            nearIm[k] = before.gIm(k);
        }
    }

    /** Impedance on which Γ is told. */
    ComplexArray reference() {
        return reference;
    }

    /** The wave that leaves on the neighbour toward its near end, over the forward wave on the line: S21/(1 − S22 Γn). */
    ComplexArray heard() {
        double[] re = new double[count];
        double[] im = new double[count];
        for (int k = 0; k < count; k++) {
            double sRe = both.sRe(1, 1, k);
            double sIm = both.sIm(1, 1, k);
            double dRe = 1 - (sRe * nearRe[k] - sIm * nearIm[k]);
            double dIm = -(sRe * nearIm[k] + sIm * nearRe[k]);
            double size = dRe * dRe + dIm * dIm;
            double nRe = both.sRe(1, 0, k);
            double nIm = both.sIm(1, 0, k);
            re[k] = (nRe * dRe + nIm * dIm) / size;
            im[k] = (nIm * dRe - nRe * dIm) / size;
        }
        return ComplexArray.takingOver(re, im);
    }

    /** The forward wave on the neighbour at the front, over that on the line: Γn times what is heard. */
    ComplexArray neighbourForward() {
        ComplexArray heard = heard();
        double[] re = new double[count];
        double[] im = new double[count];
        for (int k = 0; k < count; k++) {
            re[k] = heard.re(k) * nearRe[k] - heard.im(k) * nearIm[k];
            im[k] = heard.re(k) * nearIm[k] + heard.im(k) * nearRe[k];
        }
        return ComplexArray.takingOver(re, im);
    }

    /** Γ of the line at the front, with the neighbour closed. */
    ComplexArray reflection() {
        ComplexArray forward = neighbourForward();
        double[] re = new double[count];
        double[] im = new double[count];
        for (int k = 0; k < count; k++) {
            double xRe = both.sRe(0, 1, k);
            double xIm = both.sIm(0, 1, k);
            re[k] = both.sRe(0, 0, k) + xRe * forward.re(k) - xIm * forward.im(k);
            im[k] = both.sIm(0, 0, k) + xRe * forward.im(k) + xIm * forward.re(k);
        }
        return ComplexArray.takingOver(re, im);
    }

    /** Lines inside, nearest first, if they were wanted. */
    Deque<Station> stations() {
        return stations;
    }

    /** F from the front to the first station, or to the far side where none was wanted. */
    ComplexArray[] fromFront() {
        return both.forwards();
    }
}
