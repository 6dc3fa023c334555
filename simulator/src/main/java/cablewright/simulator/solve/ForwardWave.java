// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.kernel.ComplexBlock;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;

/**
 * What becomes of the forward wave on its way from the port: a chain of probes, each with the wave that arrives there over
 * that which left the probe before. {@link ReflectionRecursion} works it out on its way back from the load.
 */
public final class ForwardWave implements ForwardSink {

    private final BlockWorkspace workspace;
    private final ProbeFilter wanted;
    private final Deque<Probe> probes = new ArrayDeque<>();
    private ComplexBlock product;
    private ReflectionRecursion recursion;

    private ForwardWave(BlockWorkspace workspace, ProbeFilter wanted) {
        this.workspace = workspace;
        this.wanted = wanted;
        startProduct();
    }

    /**
     * Follows the wave through a whole circuit.
     *
     * @param network the circuit
     * @param otherwiseOhms reference resistance of a circuit without any line [Ω]
     * @param workspace where to work
     * @param wanted where the forward wave is wanted
     * @return the forward wave, and Γ with it
     */
    public static ForwardWave through(
            Network network, double otherwiseOhms, BlockWorkspace workspace, ProbeFilter wanted) {
        ForwardWave wave = new ForwardWave(workspace, wanted);
        wave.recursion = ReflectionRecursion.through(network, otherwiseOhms, workspace, wave);
        return wave;
    }

    /** Refers the port to a resistance. */
    public void onto(double ohms) {
        recursion.onto(ohms);
    }

    /** Goes onto the line of a cross-section before the port. */
    public void onto(CrossSection section) {
        recursion.onto(section);
    }

    /** Returns Γ at the port; only to be read. */
    public ComplexBlock reflection() {
        return recursion.reflection();
    }

    /** Returns the probes in the order in which the forward wave meets them. */
    public Collection<Probe> probes() {
        return probes;
    }

    private ComplexBlock startProduct() {
        product = new ComplexBlock(workspace.count()).fill(1);
        return product;
    }

    @Override
    public boolean isWanted() {
        return true;
    }

    @Override
    public void pass(ComplexBlock n, ComplexBlock d) {
        ComplexBlock factor = workspace.take();
        factor.setQuotient(n, d).zeroWhereZero(n);
        product.times(factor);
        workspace.give(factor);
    }

    @Override
    public void pass(double share) {
        product.times(share);
    }

    @Override
    public void end(boolean endless, ComplexBlock reflection) {
        if (endless || wanted.atEnd()) {
            ComplexBlock across = new ComplexBlock(workspace.count()).setOnePlus(reflection, 1);
            probes.addFirst(new Probe.AtEnd(startProduct(), across));
        }
    }

    @Override
    public void line(int element, Element.Line line, LineWave wave, ComplexBlock reflection) {
        if (wanted.onLine(element)) {
            ComplexBlock atEnd = new ComplexBlock(workspace.count()).set(reflection);
            probes.addFirst(new Probe.OnLine(startProduct(), line, element, atEnd));
        } else {
            ComplexBlock decay = workspace.take();
            product.times(wave.decay(line.lengthMetres(), decay));
            workspace.give(decay);
        }
    }

    @Override
    public ForwardSink onBranch(int element) {
        ProbeFilter there = wanted.onBranch(element);
        return there == null ? NONE : new ForwardWave(workspace, there);
    }

    @Override
    public void branch(int element, ForwardSink there, ComplexBlock n, ComplexBlock d) {
        if (there instanceof ForwardWave branch) {
            ComplexBlock side =
                    new ComplexBlock(workspace.count()).setQuotient(n, d).zeroWhereZero(n);
            probes.addFirst(new Probe.AtBranch(startProduct(), element, side, branch));
        }
    }

    @Override
    public boolean wantsLinesOf(int element) {
        return wanted.onLine(element);
    }

    @Override
    public void split(int element, EvenOddSection section) {
        EvenOddField field = new EvenOddField(section);
        if (wanted.onLine(element)) {
            probes.addFirst(new Probe.AtSplit(startProduct(), element, field));
        } else {
            field.multiplyOnward(product);
        }
    }
}
