// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ElementVisitor;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.kernel.ComplexBlock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The way back through a stretch that the line shares with a neighbour. It starts with what lies behind each of the two
 * circuits, goes through the lines in even and odd mode, e = (A + B)/2 and o = (A − B)/2, and through what is put in the line as
 * a two-port before its own circuit, and ends with the neighbour closed by what lies before it:
 * Γ = S11 + S12 S21 Γn/(1 − S22 Γn).
 *
 * <p>At the front the reference of both circuits is the impedance of the first line inside as it would be unsplit.
 */
public final class EvenOddSection implements ElementVisitor<Void> {

    private static final int LINE = 0;
    private static final int NEIGHBOUR = 1;

    /** Rows of the matrix: what the two circuits reflect, and the two waves that arrive at a far place. */
    private static final int FAR = 2;

    private final Element.Split split;
    private final BlockWorkspace workspace;
    private final int count;
    private final boolean wantLines;
    private final WaveMatrix waves;
    private final TwoPort twoPort;
    private final Deque<Station> stations = new ArrayDeque<>();
    private final ComplexBlock reference;
    private final ComplexBlock work;
    private final Map<CrossSection, LineWave> waveOf = new HashMap<>();
    private CrossSection on;
    private CrossSection modesOn;
    private double metresLeft;
    private ComplexBlock heard;
    private ComplexBlock neighbourForward;

    /**
     * A line inside, with what is needed to follow the wave over it.
     *
     * @param line the line
     * @param startMetres where it begins, from the start of the stretch [m]
     * @param even its even mode
     * @param odd its odd mode
     * @param end what both modes reflect at its far end, by rows
     * @param onward waves from its near end to that of the next line, or to the far side, by rows
     */
    record Station(
            Element.Line line,
            double startMetres,
            LineWave even,
            LineWave odd,
            List<ComplexBlock> end,
            List<ComplexBlock> onward) {}

    private EvenOddSection(Element.Split split, BlockWorkspace workspace, boolean wantLines) {
        this.split = split;
        this.workspace = workspace;
        this.count = workspace.count();
        this.wantLines = wantLines;
        this.waves = new WaveMatrix(4, 2, count);
        this.twoPort = new TwoPort(count);
        this.reference =
                new ComplexBlock(count).set(wave(first(split).section()).impedance());
        this.work = new ComplexBlock(count);
        this.metresLeft = split.lengthMetres();
        startFar(false);
    }

    /** The first line inside a stretch. */
    public static Element.Line first(Element.Split split) {
        return lines(split).get(0);
    }

    /** The last line inside a stretch. */
    public static Element.Line last(Element.Split split) {
        List<Element.Line> lines = lines(split);
        return lines.get(lines.size() - 1);
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

    /** Goes back through a stretch; Γ behind it must be held on the impedance of its last line. */
    static EvenOddSection through(
            Element.Split split,
            ComplexBlock behind,
            ComplexBlock behindOhms,
            BlockWorkspace workspace,
            boolean wantLines) {
        EvenOddSection section = new EvenOddSection(split, workspace, wantLines);
        section.start(behind, behindOhms);
        for (int i = split.inside().size() - 1; i >= 0; i--) {
            split.inside().get(i).accept(section);
        }
        section.arrive();
        return section;
    }

    private void start(ComplexBlock behind, ComplexBlock behindOhms) {
        on = last(split).section();
        if (split.neighbourFar().isEmpty()) {
            // The pair as made sees the load; the circuit of one pair against the other is open.
            boolean openIsEven = split.shape().pairAgainstPairIsEven();
            int pair = openIsEven ? 1 : 0;
            waves.at(pair, pair).set(behind);
            waves.at(1 - pair, 1 - pair).fill(1);
            startFar(openIsEven);
            toCircuits();
            return;
        }
        ReflectionRecursion other =
                ReflectionRecursion.through(split.neighbourFar().get(), behindOhms.re(0), workspace);
        other.onto(on);
        waves.at(LINE, LINE).set(behind);
        waves.at(NEIGHBOUR, NEIGHBOUR).set(other.reflection());
        other.end();
    }

    /** Makes here the far place; its rows change places if wanted. */
    private void startFar(boolean swapped) {
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 2; column++) {
                waves.at(FAR + row, column).fill((row == column) == swapped ? 0 : 1);
            }
        }
    }

    private List<ComplexBlock> copy(int firstRow) {
        List<ComplexBlock> out = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            out.add(new ComplexBlock(count).set(waves.at(firstRow + i / 2, i % 2)));
        }
        return out;
    }

    /** From circuits to modes: S ← U S V, F ← F V, with a = V (modes), V = [1 1; 1 −1], U = V/2. */
    private void toModes() {
        change(1, 0.5);
    }

    /** From modes to circuits: S ← V S U, F ← F U. */
    private void toCircuits() {
        change(0.5, 1);
    }

    private void change(double columns, double rows) {
        for (int row = 0; row < FAR + 2; row++) {
            sumAndDifference(waves.at(row, 0), waves.at(row, 1), columns);
        }
        for (int column = 0; column < 2; column++) {
            sumAndDifference(waves.at(0, column), waves.at(1, column), rows);
        }
    }

    private void sumAndDifference(ComplexBlock a, ComplexBlock b, double factor) {
        work.set(a).minus(b).times(factor);
        a.plus(b).times(factor);
        b.set(work);
    }

    /** Puts both circuits from the impedance that they are on onto another line's. */
    private void onto(CrossSection section) {
        leaveModes();
        if (section.equals(on)) {
            return;
        }
        twoPort.step(wave(on).impedance(), wave(section).impedance());
        waves.join(LINE, twoPort);
        waves.join(NEIGHBOUR, twoPort);
        on = section;
    }

    private void enterModes(CrossSection section, LineWave even, LineWave odd) {
        onto(section);
        toModes();
        ComplexBlock pair = wave(section).impedance();
        waves.join(0, twoPort.step(pair, even.impedance()));
        waves.join(1, twoPort.step(pair, odd.impedance()));
        modesOn = section;
    }

    private void leaveModes() {
        if (modesOn != null) {
            SplitShape.Modes modes = split.shape().modes(modesOn);
            ComplexBlock pair = wave(modesOn).impedance();
            waves.join(0, twoPort.step(mode(modesOn, modes.even()).impedance(), pair));
            waves.join(1, twoPort.step(mode(modesOn, modes.odd()).impedance(), pair));
            toCircuits();
            modesOn = null;
        }
    }

    private LineWave mode(CrossSection section, double factor) {
        return wave(factor == 1 ? section : section.scaled(factor));
    }

    private LineWave wave(CrossSection section) {
        return waveOf.computeIfAbsent(section, workspace::ownWave);
    }

    @Override
    public Void line(Element.Line line) {
        CrossSection section = line.section();
        SplitShape.Modes modes = split.shape().modes(section);
        LineWave even = mode(section, modes.even());
        LineWave odd = mode(section, modes.odd());
        if (modesOn == null || !modesOn.equals(section)) {
            enterModes(section, even, odd);
        }
        List<ComplexBlock> end = wantLines ? copy(0) : List.of();
        waves.through(0, even.decay(line.lengthMetres(), work));
        waves.through(1, odd.decay(line.lengthMetres(), work));
        metresLeft -= line.lengthMetres();
        if (wantLines) {
            stations.addFirst(new Station(line, metresLeft, even, odd, end, copy(FAR)));
            startFar(false);
        }
        return null;
    }

    @Override
    public Void series(Element.Series series) {
        leaveModes();
        waves.join(LINE, twoPort.series(series.part(), wave(on).impedance(), workspace));
        return null;
    }

    @Override
    public Void shunt(Element.Shunt shunt) {
        leaveModes();
        waves.join(LINE, twoPort.shunt(shunt.part(), wave(on).impedance(), workspace));
        return null;
    }

    @Override
    public Void lineBreak(Element.Break element) {
        leaveModes();
        waves.join(LINE, twoPort.wall(1));
        return null;
    }

    @Override
    public Void contact(Element.Contact element) {
        leaveModes();
        waves.join(LINE, twoPort.wall(-1));
        return null;
    }

    @Override
    public Void branch(Element.Branch branch) {
        leaveModes();
        double otherwise = wave(on).impedance().re(0);
        ReflectionRecursion other = ReflectionRecursion.through(branch.branch(), otherwise, workspace);
        LumpedPart part = new LumpedPart(workspace).across(other.reflection(), other.reference(), wave(on).impedance());
        other.end();
        waves.join(LINE, twoPort.part(part));
        part.release(workspace);
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
        onto(first(split).section());
        ReflectionRecursion before = ReflectionRecursion.through(split.neighbourNear(), reference.re(0), workspace);
        before.onto(first(split).section());
        ComplexBlock near = before.reflection();
        // S21/(1 − S22 Γn).
        work.setProduct(waves.at(NEIGHBOUR, NEIGHBOUR), near).times(-1).plus(1);
        heard = new ComplexBlock(count).setQuotient(waves.at(NEIGHBOUR, LINE), work);
        neighbourForward = new ComplexBlock(count).setProduct(heard, near);
        before.end();
    }

    /** Reference impedance of Γ. */
    ComplexBlock reference() {
        return reference;
    }

    /** The wave that leaves on the neighbour toward its near end, over the forward wave on the line: S21/(1 − S22 Γn). */
    ComplexBlock heard() {
        return heard;
    }

    /** The forward wave on the neighbour at the front, over that on the line: Γn times what is heard. */
    ComplexBlock neighbourForward() {
        return neighbourForward;
    }

    /** Γ of the line at the front, with the neighbour closed; in a block that is used again. */
    ComplexBlock reflection() {
        return work.set(waves.at(LINE, LINE)).plusProduct(waves.at(LINE, NEIGHBOUR), neighbourForward);
    }

    /** Lines inside, nearest first, if they were wanted. */
    Deque<Station> stations() {
        return stations;
    }

    /** Waves from the front to the first station, or to the far side where none was wanted, by rows. */
    List<ComplexBlock> fromFront() {
        return copy(FAR);
    }
}
