// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ElementVisitor;
import cablewright.simulator.circuit.ImpedanceFraction;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.kernel.ComplexArray;
import java.util.Arrays;

/**
 * The reflection coefficient of all that lies behind a place, on the way from the load back to the port, at the
 * frequencies of a table.
 *
 * <p>Γ is held on a reference impedance Zr, the characteristic impedance of the line it is in. With z = Z/Zr, y = Y Zr:
 *
 * <ul>
 *   <li>through a length of line, Γ e^(−2γl): only decaying exponentials, so no length or loss can overflow;
 *   <li>onto another line, (r + Γ)/(1 + rΓ) with r = (Zr − Z')/(Zr + Z');
 *   <li>series Z, (2Γ + z(1 − Γ))/(2 + z(1 − Γ)); shunt Y, (2Γ − y(1 + Γ))/(2 + y(1 + Γ)).
 * </ul>
 *
 * <p>Z is held as a fraction, so a value near infinity or zero loses nothing; an exact one decides Γ by itself. From
 * Pozar, Microwave Engineering, 4th ed., ch. 2 and 4 (from memory), rearranged.
 */
public class ReflectionRecursion implements ElementVisitor<Void> {

    private final LineTable table;
    private final int count;
    private final double[] gRe;
    private final double[] gIm;
    private final double[] zRe;
    private final double[] zIm;

    ReflectionRecursion(LineTable table) {
        this.table = table;
        this.count = table.frequencies().count();
        this.gRe = new double[count];
        this.gIm = new double[count];
        this.zRe = new double[count];
        this.zIm = new double[count];
    }

    /** Starts at a circuit's load, on the impedance of the line before it or, without one, on a given impedance. */
    static ReflectionRecursion atLoadOf(Network network, double otherwiseOhms, LineTable table) {
        ReflectionRecursion wave = new ReflectionRecursion(table);
        wave.startAtLoadOf(network, otherwiseOhms);
        return wave;
    }

    /** Starts on a line with the same reflection at all frequencies. */
    public static ReflectionRecursion onLine(CrossSection section, double reflection, LineTable table) {
        ReflectionRecursion wave = new ReflectionRecursion(table);
        wave.startOn(section);
        wave.fill(reflection);
        return wave;
    }

    /** Γ as it is now. */
    public final ComplexArray reflectionNow() {
        return ComplexArray.takingOver(gRe.clone(), gIm.clone());
    }

    /** Starts at a load, on an impedance that is given for each frequency. */
    public static ReflectionRecursion atLoad(Load load, double[] ohmsRe, double[] ohmsIm, LineTable table) {
        ReflectionRecursion wave = new ReflectionRecursion(table);
        System.arraycopy(ohmsRe, 0, wave.zRe, 0, wave.count);
        System.arraycopy(ohmsIm, 0, wave.zIm, 0, wave.count);
        wave.meet(load);
        return wave;
    }

    /** Goes back through a whole circuit. */
    public static ReflectionRecursion through(Network network, double otherwiseOhms, LineTable table) {
        ReflectionRecursion wave = atLoadOf(network, otherwiseOhms, table);
        for (int i = network.elements().size() - 1; i >= 0; i--) {
            network.elements().get(i).accept(wave);
        }
        return wave;
    }

    final void startAtLoadOf(Network network, double otherwiseOhms) {
        startOn(network, otherwiseOhms);
        meet(network.load());
    }

    final LineTable table() {
        return table;
    }

    final int count() {
        return count;
    }

    public final double gRe(int i) {
        return gRe[i];
    }

    public final double gIm(int i) {
        return gIm[i];
    }

    final double zRe(int i) {
        return zRe[i];
    }

    final double zIm(int i) {
        return zIm[i];
    }

    private void startOn(Network network, double otherwiseOhms) {
        for (int i = network.elements().size() - 1; i >= 0; i--) {
            if (network.elements().get(i) instanceof Element.Line) {
                startOn(((Element.Line) network.elements().get(i)).section());
                return;
            }
        }
        Arrays.fill(zRe, otherwiseOhms);
    }

    private void startOn(CrossSection section) {
        ComplexArray impedance = table.wave(section).impedance();
        for (int k = 0; k < count; k++) {
            zRe[k] = impedance.re(k);
            zIm[k] = impedance.im(k);
        }
    }

    private void meet(Load load) {
        if (load instanceof Load.Open) {
            fill(1);
        } else if (load instanceof Load.Short) {
            fill(-1);
        } else if (load instanceof Load.Part part) {
            fill(1);
            shunt(part.part());
        } else if (load instanceof Load.Endless endless) {
            endless(endless.section());
        }
    }

    private void fill(double reflection) {
        Arrays.fill(gRe, reflection);
        Arrays.fill(gIm, 0);
    }

    private void endless(CrossSection section) {
        ComplexArray impedance = table.wave(section).impedance();
        for (int i = 0; i < count; i++) {
            double bRe = impedance.re(i);
            double bIm = impedance.im(i);
            divide(i, bRe - zRe[i], bIm - zIm[i], bRe + zRe[i], bIm + zIm[i]);
        }
    }

    /** Sets Γ to a quotient. */
    private void divide(int i, double nRe, double nIm, double dRe, double dIm) {
        double size = dRe * dRe + dIm * dIm;
        gRe[i] = (nRe * dRe + nIm * dIm) / size;
        gIm[i] = (nIm * dRe - nRe * dIm) / size;
    }

    private void onto(int i, double newRe, double newIm) {
        if (newRe == zRe[i] && newIm == zIm[i]) {
            return;
        }
        double dRe = zRe[i] - newRe;
        double dIm = zIm[i] - newIm;
        double tRe = zRe[i] + newRe;
        double tIm = zIm[i] + newIm;
        // (d + tΓ)/(t + dΓ)
        double nRe = dRe + tRe * gRe[i] - tIm * gIm[i];
        double nIm = dIm + tRe * gIm[i] + tIm * gRe[i];
        double mRe = tRe + dRe * gRe[i] - dIm * gIm[i];
        double mIm = tIm + dRe * gIm[i] + dIm * gRe[i];
        divide(i, nRe, nIm, mRe, mIm);
        zRe[i] = newRe;
        zIm[i] = newIm;
    }

    /** Refers Γ to a resistance. */
    public void onto(double ohms) {
        for (int i = 0; i < count; i++) {
            onto(i, ohms, 0);
        }
    }

    /** Goes onto the line of another cross-section, referring Γ to its characteristic impedance. */
    public void onto(CrossSection section) {
        ComplexArray impedance = table.wave(section).impedance();
        for (int i = 0; i < count; i++) {
            onto(i, impedance.re(i), impedance.im(i));
        }
    }

    @Override
    public Void line(Element.Line element) {
        onto(element.section());
        ComplexArray trip = table.roundTrip(element.section(), element.lengthMetres());
        for (int i = 0; i < count; i++) {
            double re = gRe[i] * trip.re(i) - gIm[i] * trip.im(i);
            gIm[i] = gRe[i] * trip.im(i) + gIm[i] * trip.re(i);
            gRe[i] = re;
        }
        return null;
    }

    @Override
    public Void series(Element.Series element) {
        ImpedanceFraction z = new ImpedanceFraction(element.part());
        for (int i = 0; i < count; i++) {
            z.at(table.sRe(i), table.sIm(i));
            seriesAt(i, z.numeratorRe(), z.numeratorIm(), z.denominatorRe(), z.denominatorIm());
        }
        return null;
    }

    /** Puts Z = n/d in series: (2Γ d Zr + n(1 − Γ))/(2 d Zr + n(1 − Γ)). */
    private void seriesAt(int i, double nRe, double nIm, double dRe, double dIm) {
        if (dRe == 0 && dIm == 0) {
            gRe[i] = 1;
            gIm[i] = 0;
            return;
        }
        double wRe = 2 * (dRe * zRe[i] - dIm * zIm[i]);
        double wIm = 2 * (dRe * zIm[i] + dIm * zRe[i]);
        double hRe = 1 - gRe[i];
        double hIm = -gIm[i];
        double pRe = nRe * hRe - nIm * hIm;
        double pIm = nRe * hIm + nIm * hRe;
        divide(i, wRe * gRe[i] - wIm * gIm[i] + pRe, wRe * gIm[i] + wIm * gRe[i] + pIm, wRe + pRe, wIm + pIm);
    }

    @Override
    public Void shunt(Element.Shunt element) {
        shunt(element.part());
        return null;
    }

    void shunt(Lumped part) {
        ImpedanceFraction z = new ImpedanceFraction(part);
        for (int i = 0; i < count; i++) {
            z.at(table.sRe(i), table.sIm(i));
            shuntAt(i, z.denominatorRe(), z.denominatorIm(), z.numeratorRe(), z.numeratorIm());
        }
    }

    /** Puts Y = n/d across: (2Γ d − n Zr(1 + Γ))/(2 d + n Zr(1 + Γ)). */
    final void shuntAt(int i, double nRe, double nIm, double dRe, double dIm) {
        if (dRe == 0 && dIm == 0) {
            gRe[i] = -1;
            gIm[i] = 0;
            return;
        }
        double hRe = 1 + gRe[i];
        double hIm = gIm[i];
        double vRe = zRe[i] * hRe - zIm[i] * hIm;
        double vIm = zRe[i] * hIm + zIm[i] * hRe;
        double pRe = nRe * vRe - nIm * vIm;
        double pIm = nRe * vIm + nIm * vRe;
        divide(
                i,
                2 * (dRe * gRe[i] - dIm * gIm[i]) - pRe,
                2 * (dRe * gIm[i] + dIm * gRe[i]) - pIm,
                2 * dRe + pRe,
                2 * dIm + pIm);
    }

    @Override
    public Void lineBreak(Element.Break element) {
        fill(1);
        return null;
    }

    @Override
    public Void contact(Element.Contact element) {
        fill(-1);
        return null;
    }

    @Override
    public Void branch(Element.Branch element) {
        ReflectionRecursion other = through(element.branch(), zRe[0], table);
        for (int i = 0; i < count; i++) {
            // The branch's admittance is (1 − Γ)/(Zr (1 + Γ)).
            double dRe = 1 + other.gRe[i];
            double dIm = other.gIm[i];
            shuntAt(
                    i,
                    1 - other.gRe[i],
                    -other.gIm[i],
                    other.zRe[i] * dRe - other.zIm[i] * dIm,
                    other.zRe[i] * dIm + other.zIm[i] * dRe);
        }
        return null;
    }

    @Override
    public Void divider(Element.Divider element) {
        onto(element.impedanceOhms());
        ReflectionRecursion other = through(element.leg(), element.impedanceOhms(), table);
        other.onto(element.impedanceOhms());
        double t = element.throughAmplitude() * element.throughAmplitude();
        double u = element.legAmplitude() * element.legAmplitude();
        for (int i = 0; i < count; i++) {
            gRe[i] = t * gRe[i] + u * other.gRe[i];
            gIm[i] = t * gIm[i] + u * other.gIm[i];
        }
        return null;
    }

    @Override
    public Void split(Element.Split element) {
        onto(SplitWave.last(element).section());
        take(SplitWave.through(element, this, table, false));
        return null;
    }

    /** Goes on from the front of a split stretch. */
    final void take(SplitWave wave) {
        ComplexArray reflection = wave.reflection();
        for (int i = 0; i < count; i++) {
            gRe[i] = reflection.re(i);
            gIm[i] = reflection.im(i);
            zRe[i] = wave.reference().re(i);
            zIm[i] = wave.reference().im(i);
        }
    }
}
