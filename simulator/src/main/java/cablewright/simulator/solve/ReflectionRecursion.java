// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ElementVisitor;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.LoadVisitor;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.kernel.ComplexBlock;

/**
 * The reflection coefficient of all that lies behind a place, on the way from the load back to the port, at a block of
 * frequencies.
 *
 * <p>Γ is held on a reference impedance Zr, the characteristic impedance of the line it is in. A forward wave of 1 V before an
 * element goes on behind it as the factor a, which is passed to a {@link ForwardSink} if there is one:
 *
 * <ul>
 *   <li>a length of line: Γ ← Γ e^(−2γl), a = e^(−γl): only decaying exponentials, so no length or loss can overflow;
 *   <li>onto another line Z': with r = (Zr − Z')/(Zr + Z'), Γ ← (r + Γ)/(1 + rΓ), a = (1 + r)/(1 + rΓ);
 *   <li>a part u/w in series (upper signs) or across, h = 1 ∓ Γ: Γ ← (2wΓ ± uh)/(2w + uh), a = 2w/(2w + uh)
 *       ({@link LumpedPart}).
 * </ul>
 *
 * <p>No factor is the small difference of large ones, so a wave behind a near-open or a near-short is as exact as one in front
 * of it. All follow from the voltage and the current that the two sides of an element have in common (Pozar, Microwave
 * Engineering, 4th ed., ch. 2 and 4, from memory, rearranged).
 */
public final class ReflectionRecursion implements ElementVisitor<Void>, LoadVisitor<Void> {

    private final BlockWorkspace workspace;
    private final ForwardSink sink;
    private final ComplexBlock reflection;
    private final ComplexBlock reference;
    private final ComplexBlock n;
    private final ComplexBlock d;
    private int element;

    private ReflectionRecursion(BlockWorkspace workspace, ForwardSink sink) {
        this.workspace = workspace;
        this.sink = sink;
        this.reflection = workspace.take();
        this.reference = workspace.take();
        this.n = workspace.take();
        this.d = workspace.take();
    }

    /** Starts on a line with the same reflection at all frequencies. */
    public static ReflectionRecursion onLine(CrossSection section, double reflection, BlockWorkspace workspace) {
        ReflectionRecursion wave = new ReflectionRecursion(workspace, ForwardSink.NONE);
        wave.reference.set(workspace.wave(section).impedance());
        wave.reflection.fill(reflection);
        return wave;
    }

    /** Starts at a load, on an impedance that is given for each frequency. */
    public static ReflectionRecursion atLoad(Load load, ComplexBlock ohms, BlockWorkspace workspace) {
        ReflectionRecursion wave = new ReflectionRecursion(workspace, ForwardSink.NONE);
        wave.reference.set(ohms);
        load.accept(wave);
        return wave;
    }

    /** Goes back through a whole circuit; a circuit without any line has the given reference resistance. */
    public static ReflectionRecursion through(Network network, double otherwiseOhms, BlockWorkspace workspace) {
        return through(network, otherwiseOhms, workspace, ForwardSink.NONE);
    }

    static ReflectionRecursion through(
            Network network, double otherwiseOhms, BlockWorkspace workspace, ForwardSink sink) {
        ReflectionRecursion wave = new ReflectionRecursion(workspace, sink);
        wave.startOn(network, otherwiseOhms);
        network.load().accept(wave);
        sink.end(network.load() instanceof Load.Endless, wave.reflection);
        for (int i = network.elements().size() - 1; i >= 0; i--) {
            wave.element = i;
            network.elements().get(i).accept(wave);
        }
        return wave;
    }

    private void startOn(Network network, double otherwiseOhms) {
        for (int i = network.elements().size() - 1; i >= 0; i--) {
            if (network.elements().get(i) instanceof Element.Line line) {
                reference.set(workspace.wave(line.section()).impedance());
                return;
            }
        }
        reference.fill(otherwiseOhms);
    }

    /** Gives the blocks back to the workspace; the recursion is of no use afterwards. */
    void end() {
        workspace.give(reflection, reference, n, d);
    }

    /** Γ as it is now; only to be read. */
    public ComplexBlock reflection() {
        return reflection;
    }

    /** The impedance on which Γ is held [Ω]; only to be read. */
    ComplexBlock reference() {
        return reference;
    }

    @Override
    public Void open(Load.Open load) {
        reflection.fill(1);
        return null;
    }

    @Override
    public Void shorted(Load.Short load) {
        reflection.fill(-1);
        return null;
    }

    @Override
    public Void part(Load.Part load) {
        reflection.fill(1);
        across(load.part());
        return null;
    }

    @Override
    public Void endless(Load.Endless load) {
        reflection.setDifferenceOverSum(workspace.wave(load.section()).impedance(), reference);
        return null;
    }

    /** Refers Γ to a resistance. */
    public void onto(double ohms) {
        ComplexBlock to = workspace.take().fill(ohms);
        onto(to);
        workspace.give(to);
    }

    /** Goes onto the line of another cross-section, referring Γ to its characteristic impedance. */
    public void onto(CrossSection section) {
        onto(workspace.wave(section).impedance());
    }

    private void onto(ComplexBlock to) {
        n.setDifferenceOverSum(reference, to);
        d.setProduct(n, reflection).plus(1);
        reflection.plus(n).over(d);
        if (sink.isWanted()) {
            sink.pass(n.plus(1), d);
        }
        reference.set(to);
    }

    @Override
    public Void line(Element.Line line) {
        LineTrip trip = workspace.trip(line);
        onto(trip.impedance());
        if (sink.isWanted()) {
            sink.line(element, line, workspace.wave(line.section()), reflection);
        }
        reflection.times(trip.roundTrip());
        return null;
    }

    @Override
    public Void series(Element.Series series) {
        LumpedPart part = new LumpedPart(workspace).inSeries(series.part(), workspace.s(), reference);
        pass(part);
        part.release(workspace);
        return null;
    }

    @Override
    public Void shunt(Element.Shunt shunt) {
        across(shunt.part());
        return null;
    }

    private void across(Lumped lumped) {
        LumpedPart part = new LumpedPart(workspace).across(lumped, workspace.s(), reference);
        pass(part);
        part.release(workspace);
    }

    private void pass(LumpedPart part) {
        ComplexBlock uh = workspace.take().setOnePlus(reflection, -part.sign()).times(part.u());
        n.setScaled(part.w(), 2);
        d.setSum(n, uh);
        if (sink.isWanted()) {
            sink.pass(n, d);
        }
        reflection.times(n).plus(part.sign(), uh).over(d).putWhereZero(part.w(), part.sign());
        workspace.give(uh);
    }

    @Override
    public Void lineBreak(Element.Break lineBreak) {
        sink.pass(0);
        reflection.fill(1);
        return null;
    }

    @Override
    public Void contact(Element.Contact contact) {
        sink.pass(0);
        reflection.fill(-1);
        return null;
    }

    /** The wave into the branch is 2(1 + Γ)Zb/(2w + u(1 + Γ)): the voltage across both over 1 + Γb. */
    @Override
    public Void branch(Element.Branch branch) {
        int here = element;
        ForwardSink there = sink.onBranch(here);
        ReflectionRecursion other = through(branch.branch(), reference.re(0), workspace, there);
        LumpedPart part = new LumpedPart(workspace).across(other.reflection, other.reference, reference);
        ComplexBlock into = workspace.take();
        if (sink.isWanted()) {
            into.setOnePlus(reflection, 1).times(other.reference).times(2);
        }
        pass(part);
        sink.branch(here, there, into, d);
        workspace.give(into);
        part.release(workspace);
        other.end();
        return null;
    }

    /** Γ ← t² Γ + u² Γ of the leg, a = t, on the divider's impedance. */
    @Override
    public Void divider(Element.Divider divider) {
        int here = element;
        ForwardSink there = sink.onBranch(here);
        onto(divider.impedanceOhms());
        ReflectionRecursion leg = through(divider.leg(), divider.impedanceOhms(), workspace, there);
        leg.onto(divider.impedanceOhms());
        double t = divider.throughAmplitude();
        double u = divider.legAmplitude();
        sink.pass(t);
        sink.branch(here, there, n.fill(u), d.fill(1));
        reflection.times(t * t).plus(leg.reflection.times(u * u));
        leg.end();
        return null;
    }

    @Override
    public Void split(Element.Split split) {
        int here = element;
        onto(EvenOddSection.last(split).section());
        EvenOddSection section =
                EvenOddSection.through(split, reflection, reference, workspace, sink.wantsLinesOf(here));
        sink.split(here, section);
        reflection.set(section.reflection());
        reference.set(section.reference());
        return null;
    }
}
