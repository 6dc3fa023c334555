// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.ImpedanceFraction;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.solve.LineTable;
import cablewright.simulator.solve.ReflectionRecursion;
import cablewright.simulator.solve.SplitWave;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a few elements that touch do to waves of voltage: S_ij is the wave that leaves at port i for a wave of 1 V that
 * arrives at port j with nothing coming back from outside. Port 0 is the side of the source; the others are open ends, at
 * each of which one more element can be joined.
 *
 * <p>A two-port X joined at port q makes S_ij + S_iq X11 S_qj/D, S_iq X12/D, X21 S_qj/D and X22 + X21 S_qq X12/D of the
 * matrix, with D = 1 − S_qq X11: the series of all bounces between the two, summed (Redheffer's star product, from memory).
 * A wave onto another reference Z' meets r = (Z' − Z)/(Z' + Z) and goes on as 1 + r. At a joint of lines of admittances Y
 * a wave goes on as 2Y/ΣY. Where D = 0 a piece is shut off between two total reflections: nothing gets in.
 */
final class ScatteringMatrix {

    private final LineTable table;
    private final int count;
    private final List<double[][]> references = new ArrayList<>();
    private final List<List<double[][]>> waves = new ArrayList<>();
    private final List<List<Double>> seconds = new ArrayList<>();
    private final double[] x = new double[8];

    private ScatteringMatrix(LineTable table, double[][] reference) {
        this.table = table;
        this.count = table.frequencies().count();
        for (int i = 0; i < 2; i++) {
            references.add(reference);
            waves.add(new ArrayList<>(List.of(new double[2][count], new double[2][count])));
            seconds.add(new ArrayList<>(List.of(0.0, 0.0)));
        }
        Arrays.fill(at(0, 1)[0], 1);
        Arrays.fill(at(1, 0)[0], 1);
    }

    /** Nothing yet: port 0 and port 1 are joined, on the impedance of a line. */
    static ScatteringMatrix on(CrossSection section, LineTable table) {
        return new ScatteringMatrix(table, impedance(section, table));
    }

    /** Nothing yet: port 0 and port 1 are joined, on a resistance. */
    static ScatteringMatrix on(double ohms, LineTable table) {
        return new ScatteringMatrix(table, ohms(ohms, table.frequencies().count()));
    }

    private static double[][] impedance(CrossSection section, LineTable table) {
        ComplexArray z = table.wave(section).impedance();
        return new double[][] {z.copyOfReal(), z.copyOfImaginary()};
    }

    private static double[][] ohms(double ohms, int count) {
        double[][] z = new double[2][count];
        Arrays.fill(z[0], ohms);
        return z;
    }

    private double[][] at(int i, int j) {
        return waves.get(i).get(j);
    }

    int ports() {
        return waves.size();
    }

    /** S_ij as it is now. */
    ComplexArray wave(int i, int j) {
        return ComplexArray.takingOver(at(i, j)[0].clone(), at(i, j)[1].clone());
    }

    /** Time of a front from port j to port i; 0 from a port back to itself. */
    double seconds(int i, int j) {
        return seconds.get(i).get(j);
    }

    private void later(int port, double time) {
        for (int i = 0; i < ports(); i++) {
            if (i != port) {
                seconds.get(i).set(port, seconds.get(i).get(port) + time);
                seconds.get(port).set(i, seconds.get(port).get(i) + time);
            }
        }
    }

    /** Refers a port to a line of a cross-section. */
    void onto(int port, CrossSection section) {
        onto(port, impedance(section, table));
    }

    private void onto(int port, double[][] to) {
        double[][] from = references.get(port);
        for (int k = 0; k < count; k++) {
            double tRe = to[0][k] + from[0][k];
            double tIm = to[1][k] + from[1][k];
            double dRe = to[0][k] - from[0][k];
            double dIm = to[1][k] - from[1][k];
            if (dRe != 0 || dIm != 0) {
                double size = tRe * tRe + tIm * tIm;
                double rRe = (dRe * tRe + dIm * tIm) / size;
                double rIm = (dIm * tRe - dRe * tIm) / size;
                set(rRe, rIm, 1 - rRe, -rIm, 1 + rRe, rIm, -rRe, -rIm);
                join(port, k);
            }
        }
        references.set(port, to);
    }

    /** X11, X12, X21, X22 of the two-port to be joined next. */
    private void set(double... values) {
        System.arraycopy(values, 0, x, 0, x.length);
    }

    /** Joins the two-port x at a port, at one frequency. */
    private void join(int q, int k) {
        double[][] own = at(q, q);
        double qRe = own[0][k];
        double qIm = own[1][k];
        double dRe = 1 - (qRe * x[0] - qIm * x[1]);
        double dIm = -(qRe * x[1] + qIm * x[0]);
        double size = dRe * dRe + dIm * dIm;
        double iRe = size == 0 ? 0 : dRe / size;
        double iIm = size == 0 ? 0 : -dIm / size;
        addBounces(ports(), q, k, x[0] * iRe - x[1] * iIm, x[0] * iIm + x[1] * iRe);
        double outRe = x[4] * iRe - x[5] * iIm;
        double outIm = x[4] * iIm + x[5] * iRe;
        double inRe = x[2] * iRe - x[3] * iIm;
        double inIm = x[2] * iIm + x[3] * iRe;
        for (int i = 0; i < ports(); i++) {
            if (i != q) {
                scale(at(i, q), k, inRe, inIm);
                scale(at(q, i), k, outRe, outIm);
            }
        }
        double bRe = qRe * outRe - qIm * outIm;
        double bIm = qRe * outIm + qIm * outRe;
        own[0][k] = x[6] + bRe * x[2] - bIm * x[3];
        own[1][k] = x[7] + bRe * x[3] + bIm * x[2];
    }

    /** S_ij + S_iq g S_qj for the first ports but q. */
    private void addBounces(int ports, int q, int k, double gRe, double gIm) {
        if (gRe == 0 && gIm == 0) {
            return;
        }
        for (int j = 0; j < ports; j++) {
            if (j == q) {
                continue;
            }
            double[][] there = at(q, j);
            double hRe = gRe * there[0][k] - gIm * there[1][k];
            double hIm = gRe * there[1][k] + gIm * there[0][k];
            for (int i = 0; i < ports; i++) {
                if (i != q) {
                    double[][] back = at(i, q);
                    double[][] sum = at(i, j);
                    sum[0][k] += back[0][k] * hRe - back[1][k] * hIm;
                    sum[1][k] += back[0][k] * hIm + back[1][k] * hRe;
                }
            }
        }
    }

    private static void scale(double[][] value, int k, double re, double im) {
        double was = value[0][k];
        value[0][k] = was * re - value[1][k] * im;
        value[1][k] = was * im + value[1][k] * re;
    }

    /** Joins a length of line, and refers the port to it. */
    void line(int port, Element.Line line, double frontSeconds) {
        onto(port, line.section());
        ComplexArray decay = LineTable.decay(table.wave(line.section()).propagation(), line.lengthMetres());
        for (int i = 0; i < ports(); i++) {
            for (int k = 0; k < count; k++) {
                scale(at(i, port), k, decay.re(k), decay.im(k));
                scale(at(port, i), k, decay.re(k), decay.im(k));
            }
        }
        later(port, frontSeconds);
    }

    /** Joins Z in series: z/(2 + z) comes back and 2/(2 + z) goes on, with z = Z/Zr. */
    void series(int port, Lumped part) {
        ImpedanceFraction z = new ImpedanceFraction(part);
        double[][] ref = references.get(port);
        for (int k = 0; k < count; k++) {
            z.at(table.sRe(k), table.sIm(k));
            double oneRe = z.denominatorRe() * ref[0][k] - z.denominatorIm() * ref[1][k];
            double oneIm = z.denominatorRe() * ref[1][k] + z.denominatorIm() * ref[0][k];
            joinPart(port, k, 1, z.numeratorRe(), z.numeratorIm(), oneRe, oneIm);
        }
    }

    /** Joins Z across: −y/(2 + y) comes back and 2/(2 + y) goes on, with y = Zr/Z. */
    void shunt(int port, Lumped part) {
        ImpedanceFraction z = new ImpedanceFraction(part);
        double[][] ref = references.get(port);
        for (int k = 0; k < count; k++) {
            z.at(table.sRe(k), table.sIm(k));
            double yRe = z.denominatorRe() * ref[0][k] - z.denominatorIm() * ref[1][k];
            double yIm = z.denominatorRe() * ref[1][k] + z.denominatorIm() * ref[0][k];
            joinPart(port, k, -1, yRe, yIm, z.numeratorRe(), z.numeratorIm());
        }
    }

    /** Sends sign · n/(2d + n) back and 2d/(2d + n) on, from both sides. */
    private void joinPart(int port, int k, int sign, double nRe, double nIm, double dRe, double dIm) {
        double wRe = 2 * dRe + nRe;
        double wIm = 2 * dIm + nIm;
        double size = wRe * wRe + wIm * wIm;
        double backRe = sign * (nRe * wRe + nIm * wIm) / size;
        double backIm = sign * (nIm * wRe - nRe * wIm) / size;
        double onRe = 2 * (dRe * wRe + dIm * wIm) / size;
        double onIm = 2 * (dIm * wRe - dRe * wIm) / size;
        set(backRe, backIm, onRe, onIm, onRe, onIm, backRe, backIm);
        join(port, k);
    }

    /**
     * Joins a stretch that the line shares with a neighbour. S11 is what comes back with its far side matched, S22 the same
     * from behind, and S12 S21 = (Γ(1) − S11)(1 − S22), with Γ(1) what comes back when all does behind it. A way goes as
     * often out through it as home, so it is all one how the product is shared out: √|S12 S21| is taken home.
     */
    void split(int port, Element.Split split, double frontSeconds) {
        onto(port, SplitWave.first(split).section());
        CrossSection behind = SplitWave.last(split).section();
        ComplexArray near = reflection(split, behind, 0);
        ComplexArray whole = reflection(split, behind, 1);
        ComplexArray far = reflection(split.turned(), SplitWave.first(split).section(), 0);
        for (int k = 0; k < count; k++) {
            double aRe = whole.re(k) - near.re(k);
            double aIm = whole.im(k) - near.im(k);
            double pRe = aRe * (1 - far.re(k)) + aIm * far.im(k);
            double pIm = aIm * (1 - far.re(k)) - aRe * far.im(k);
            double home = Math.sqrt(Math.hypot(pRe, pIm));
            double scale = home == 0 ? 0 : 1 / home;
            set(near.re(k), near.im(k), home, 0, pRe * scale, pIm * scale, far.re(k), far.im(k));
            join(port, k);
        }
        references.set(port, impedance(behind, table));
        later(port, frontSeconds);
    }

    private ComplexArray reflection(Element.Split split, CrossSection behind, double reflection) {
        ReflectionRecursion wave = ReflectionRecursion.onLine(behind, reflection, table);
        split.accept(wave);
        return wave.reflectionNow();
    }

    /** Joins a place through which nothing goes: 1 comes back from an open, −1 from a contact, on both sides. */
    void wall(int port, double reflection) {
        for (int k = 0; k < count; k++) {
            set(reflection, 0, 0, 0, 0, 0, reflection, 0);
            join(port, k);
        }
    }

    /** Joins a branch across the line. @return the port at which the branch goes on, on the reference of the line */
    int branch(int port) {
        double y = 2.0 / 3;
        double[][] three = {{y - 1, y, y}, {y, y - 1, y}, {y, y, y - 1}};
        return fork(port, three);
    }

    /** Joins a divider of isolated legs. @return the port at which its leg goes on */
    int divider(int port, Element.Divider divider) {
        onto(port, ohms(divider.impedanceOhms(), count));
        double t = divider.throughAmplitude();
        double u = divider.legAmplitude();
        return fork(port, new double[][] {{0, t, u}, {t, 0, 0}, {u, 0, 0}});
    }

    /** Joins a three-port at a port: its first port there, its second becomes the port, its third a new one. */
    private int fork(int q, double[][] three) {
        int made = addPort(q);
        for (int k = 0; k < count; k++) {
            double qRe = at(q, q)[0][k];
            double qIm = at(q, q)[1][k];
            double dRe = 1 - qRe * three[0][0];
            double dIm = -qIm * three[0][0];
            double size = dRe * dRe + dIm * dIm;
            double iRe = size == 0 ? 0 : dRe / size;
            double iIm = size == 0 ? 0 : -dIm / size;
            for (int i = 0; i < made; i++) {
                if (i != q) {
                    copyScaled(at(i, q), at(i, made), k, three[0][2] * iRe, three[0][2] * iIm);
                    copyScaled(at(q, i), at(made, i), k, three[2][0] * iRe, three[2][0] * iIm);
                }
            }
            addBounces(made, q, k, three[0][0] * iRe, three[0][0] * iIm);
            for (int i = 0; i < made; i++) {
                if (i != q) {
                    scale(at(i, q), k, three[0][1] * iRe, three[0][1] * iIm);
                    scale(at(q, i), k, three[1][0] * iRe, three[1][0] * iIm);
                }
            }
            double innerRe = qRe * iRe - qIm * iIm;
            double innerIm = qRe * iIm + qIm * iRe;
            for (int a = 1; a < 3; a++) {
                for (int b = 1; b < 3; b++) {
                    double[][] to = at(a == 1 ? q : made, b == 1 ? q : made);
                    to[0][k] = three[a][b] + three[a][0] * innerRe * three[0][b];
                    to[1][k] = three[a][0] * innerIm * three[0][b];
                }
            }
        }
        return made;
    }

    private static void copyScaled(double[][] from, double[][] to, int k, double re, double im) {
        to[0][k] = from[0][k] * re - from[1][k] * im;
        to[1][k] = from[0][k] * im + from[1][k] * re;
    }

    private int addPort(int like) {
        int made = ports();
        for (int i = 0; i < made; i++) {
            waves.get(i).add(new double[2][count]);
            seconds.get(i).add(seconds(i, like));
        }
        List<double[][]> row = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        for (int j = 0; j <= made; j++) {
            row.add(new double[2][count]);
            times.add(j == made ? 0 : seconds(like, j));
        }
        waves.add(row);
        seconds.add(times);
        references.add(references.get(like));
        return made;
    }

    /** Closes a port with a load; it counts no longer. Ports after it move down by one. */
    void close(int port, Load load) {
        close(
                port,
                ReflectionRecursion.atLoad(
                        load, references.get(port)[0], references.get(port)[1], table));
    }

    /** Closes a port with all of a circuit, which begins with a split stretch of a line. */
    void close(int port, Network network, CrossSection first) {
        onto(port, first);
        ReflectionRecursion wave = ReflectionRecursion.through(network, 1, table);
        wave.onto(first);
        close(port, wave);
    }

    private void close(int port, ReflectionRecursion wave) {
        for (int k = 0; k < count; k++) {
            set(wave.gRe(k), wave.gIm(k), 0, 0, 0, 0, 0, 0);
            join(port, k);
        }
        waves.remove(port);
        waves.forEach(row -> row.remove(port));
        seconds.remove(port);
        seconds.forEach(row -> row.remove(port));
        references.remove(port);
    }
}
