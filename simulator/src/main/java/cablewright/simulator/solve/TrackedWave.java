// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ImpedanceFraction;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.kernel.ComplexArray;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;

/**
 * The way back from the load which also keeps what becomes of the forward wave. With a₁ the forward wave before and a₂ that
 * after an element, both on their lines' impedances, and Γ₂ the reflection after it:
 *
 * <ul>
 *   <li>a length of line, a₂/a₁ = e^(−γl);
 *   <li>from a line Z₁ onto Z₂, a₂/a₁ = 2Z₂/((Z₁ + Z₂) + (Z₂ − Z₁)Γ₂);
 *   <li>series Z, 2/(2 + z(1 − Γ₂)); shunt Y, 2/(2 + y(1 + Γ₂)).
 * </ul>
 *
 * <p>No factor is the small difference of large ones, so a wave behind a near-open or a near-short is as exact as one in
 * front of it. All follow from the voltage and the current that the two sides of an element have in common (Pozar,
 * Microwave Engineering, 4th ed., ch. 2 and 4, from memory).
 */
public final class TrackedWave extends ReflectionRecursion {

    private final ProbeFilter wanted;
    private final Deque<Probe> stations = new ArrayDeque<>();
    private RunningProduct product;
    private int element;

    private TrackedWave(LineTable table, ProbeFilter wanted) {
        super(table);
        this.wanted = wanted;
        this.product = new RunningProduct(count());
    }

    /** Goes back through a whole circuit. */
    public static TrackedWave through(Network network, double otherwiseOhms, LineTable table, ProbeFilter wanted) {
        TrackedWave wave = new TrackedWave(table, wanted);
        wave.startAtLoadOf(network, otherwiseOhms);
        if (network.load() instanceof Load.Endless || wanted.atEnd()) {
            wave.markEnd();
        }
        for (int i = network.elements().size() - 1; i >= 0; i--) {
            wave.element = i;
            network.elements().get(i).accept(wave);
        }
        return wave;
    }

    /** Returns the stations in the order in which the forward wave meets them. */
    public Collection<Probe> stations() {
        return stations;
    }

    private RunningProduct fresh() {
        product = new RunningProduct(count());
        return product;
    }

    private void markEnd() {
        double[] re = new double[count()];
        double[] im = new double[count()];
        for (int i = 0; i < count(); i++) {
            re[i] = 1 + gRe(i);
            im[i] = gIm(i);
        }
        stations.addFirst(new Probe.AtEnd(fresh(), ComplexArray.takingOver(re, im)));
    }

    @Override
    public void onto(CrossSection section) {
        ComplexArray impedance = table().wave(section).impedance();
        for (int i = 0; i < count(); i++) {
            passOnto(i, impedance.re(i), impedance.im(i));
        }
        super.onto(section);
    }

    @Override
    public void onto(double ohms) {
        for (int i = 0; i < count(); i++) {
            passOnto(i, ohms, 0);
        }
        super.onto(ohms);
    }

    private void passOnto(int i, double newRe, double newIm) {
        double dRe = zRe(i) - newRe;
        double dIm = zIm(i) - newIm;
        if (dRe == 0 && dIm == 0) {
            return;
        }
        product.timesFraction(
                i,
                2 * zRe(i),
                2 * zIm(i),
                zRe(i) + newRe + dRe * gRe(i) - dIm * gIm(i),
                zIm(i) + newIm + dRe * gIm(i) + dIm * gRe(i));
    }

    @Override
    public Void line(Element.Line line) {
        onto(line.section());
        if (wanted.onLine(element)) {
            double[] endRe = new double[count()];
            double[] endIm = new double[count()];
            for (int i = 0; i < count(); i++) {
                endRe[i] = gRe(i);
                endIm[i] = gIm(i);
            }
            stations.addFirst(new Probe.OnLine(fresh(), line, element, endRe, endIm));
        } else {
            ComplexArray way = LineTable.decay(table().wave(line.section()).propagation(), line.lengthMetres());
            for (int i = 0; i < count(); i++) {
                product.times(i, way.re(i), way.im(i));
            }
        }
        return super.line(line);
    }

    @Override
    public Void series(Element.Series series) {
        ImpedanceFraction z = new ImpedanceFraction(series.part());
        for (int i = 0; i < count(); i++) {
            z.at(table().sRe(i), table().sIm(i));
            double wRe = 2 * (z.denominatorRe() * zRe(i) - z.denominatorIm() * zIm(i));
            double wIm = 2 * (z.denominatorRe() * zIm(i) + z.denominatorIm() * zRe(i));
            double hRe = 1 - gRe(i);
            double hIm = -gIm(i);
            double pRe = z.numeratorRe() * hRe - z.numeratorIm() * hIm;
            double pIm = z.numeratorRe() * hIm + z.numeratorIm() * hRe;
            product.timesFraction(i, wRe, wIm, wRe + pRe, wIm + pIm);
        }
        return super.series(series);
    }

    @Override
    void shunt(Lumped part) {
        ImpedanceFraction z = new ImpedanceFraction(part);
        for (int i = 0; i < count(); i++) {
            z.at(table().sRe(i), table().sIm(i));
            passShunt(i, z.denominatorRe(), z.denominatorIm(), z.numeratorRe(), z.numeratorIm());
        }
        super.shunt(part);
    }

    /** Passes Y = n/d: 2d/(2d + n Zr(1 + Γ)). */
    private void passShunt(int i, double nRe, double nIm, double dRe, double dIm) {
        double vRe = zRe(i) * (1 + gRe(i)) - zIm(i) * gIm(i);
        double vIm = zRe(i) * gIm(i) + zIm(i) * (1 + gRe(i));
        double pRe = nRe * vRe - nIm * vIm;
        double pIm = nRe * vIm + nIm * vRe;
        product.timesFraction(i, 2 * dRe, 2 * dIm, 2 * dRe + pRe, 2 * dIm + pIm);
    }

    @Override
    public Void lineBreak(Element.Break lineBreak) {
        product.times(0);
        return super.lineBreak(lineBreak);
    }

    @Override
    public Void contact(Element.Contact contact) {
        product.times(0);
        return super.contact(contact);
    }

    @Override
    public Void branch(Element.Branch branch) {
        ProbeFilter there = wanted.onBranch(element);
        ReflectionRecursion other = there == null
                ? through(branch.branch(), zRe(0), table())
                : through(branch.branch(), zRe(0), table(), there);
        RunningProduct side = new RunningProduct(count());
        for (int i = 0; i < count(); i++) {
            join(i, other, side);
        }
        if (there != null) {
            RunningProduct arrival = fresh();
            stations.addFirst(new Probe.AtBranch(arrival, element, side, (TrackedWave) other));
        }
        return null;
    }

    /** With Y = n/d the branch's admittance, the wave into it is 2(1 + Γ₂)Zb/(2d + n Zr(1 + Γ₂)), d = Zb(1 + Γb). */
    private void join(int i, ReflectionRecursion other, RunningProduct side) {
        double nRe = 1 - other.gRe(i);
        double nIm = -other.gIm(i);
        double hRe = 1 + other.gRe(i);
        double dRe = other.zRe(i) * hRe - other.zIm(i) * other.gIm(i);
        double dIm = other.zRe(i) * other.gIm(i) + other.zIm(i) * hRe;
        double qRe = 1 + gRe(i);
        double qIm = gIm(i);
        double vRe = zRe(i) * qRe - zIm(i) * qIm;
        double vIm = zRe(i) * qIm + zIm(i) * qRe;
        side.timesFraction(
                i,
                2 * (qRe * other.zRe(i) - qIm * other.zIm(i)),
                2 * (qRe * other.zIm(i) + qIm * other.zRe(i)),
                2 * dRe + nRe * vRe - nIm * vIm,
                2 * dIm + nRe * vIm + nIm * vRe);
        passShunt(i, nRe, nIm, dRe, dIm);
        shuntAt(i, nRe, nIm, dRe, dIm);
    }

    @Override
    public Void divider(Element.Divider divider) {
        ProbeFilter there = wanted.onBranch(element);
        onto(divider.impedanceOhms());
        product.times(divider.throughAmplitude());
        super.divider(divider);
        if (there != null) {
            TrackedWave leg = through(divider.leg(), divider.impedanceOhms(), table(), there);
            leg.onto(divider.impedanceOhms());
            RunningProduct side = new RunningProduct(count());
            side.times(divider.legAmplitude());
            stations.addFirst(new Probe.AtBranch(fresh(), element, side, leg));
        }
        return null;
    }

    @Override
    public Void split(Element.Split split) {
        boolean here = wanted.onLine(element);
        onto(SplitWave.last(split).section());
        SplitWave wave = SplitWave.through(split, this, table(), here);
        SplitField field = new SplitField(wave);
        if (here) {
            stations.addFirst(new Probe.AtSplit(fresh(), element, field));
        } else {
            field.multiplyOnward(product);
        }
        take(wave);
        return null;
    }

    /** Returns the reflection as it now stands. */
    ComplexArray reflection() {
        double[] re = new double[count()];
        double[] im = new double[count()];
        Arrays.setAll(re, this::gRe);
        Arrays.setAll(im, this::gIm);
        return ComplexArray.takingOver(re, im);
    }
}
