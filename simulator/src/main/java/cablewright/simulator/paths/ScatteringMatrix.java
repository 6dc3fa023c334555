// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.paths;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.solve.BlockWorkspace;
import cablewright.simulator.solve.EvenOddSection;
import cablewright.simulator.solve.ReflectionRecursion;
import cablewright.simulator.solve.TwoPort;
import cablewright.simulator.solve.WaveMatrix;
import java.util.ArrayList;
import java.util.List;

/**
 * Scattering matrix of a group of adjacent elements: S_ij is the wave of voltage that leaves at port i for a wave of 1 V that
 * arrives at port j with nothing coming back from outside. Port 0 is the side of the source; the others are open ends, at
 * each of which one more element can be joined ({@link WaveMatrix}).
 *
 * <p>A wave onto another reference Z' meets r = (Z' − Z)/(Z' + Z) and goes on as 1 + r. At a joint of lines of admittances Y
 * a wave goes on as 2Y/ΣY.
 */
final class ScatteringMatrix {

    private final BlockWorkspace workspace;
    private final List<ComplexBlock> references = new ArrayList<>();
    private final WaveMatrix waves;
    private final List<List<Double>> seconds = new ArrayList<>();
    private final TwoPort twoPort;

    private ScatteringMatrix(BlockWorkspace workspace, ComplexBlock reference) {
        this.workspace = workspace;
        this.waves = new WaveMatrix(2, 2, workspace.count());
        this.twoPort = new TwoPort(workspace.count());
        for (int i = 0; i < 2; i++) {
            references.add(reference);
            seconds.add(new ArrayList<>(List.of(0.0, 0.0)));
        }
        waves.at(0, 1).fill(1);
        waves.at(1, 0).fill(1);
    }

    /** An identity two-port on the impedance of a line. */
    static ScatteringMatrix on(CrossSection section, BlockWorkspace workspace) {
        return new ScatteringMatrix(workspace, impedance(section, workspace));
    }

    /** An identity two-port on a resistance. */
    static ScatteringMatrix on(double ohms, BlockWorkspace workspace) {
        return new ScatteringMatrix(workspace, new ComplexBlock(workspace.count()).fill(ohms));
    }

    private static ComplexBlock impedance(CrossSection section, BlockWorkspace workspace) {
        return new ComplexBlock(workspace.count()).set(workspace.wave(section).impedance());
    }

    int ports() {
        return waves.rows();
    }

    /** S_ij as it is now. */
    ComplexArray wave(int i, int j) {
        return waves.at(i, j).copy();
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
        onto(port, impedance(section, workspace));
    }

    private void onto(int port, ComplexBlock to) {
        waves.join(port, twoPort.step(references.get(port), to));
        references.set(port, to);
    }

    /** Joins a length of line, and refers the port to it. */
    void line(int port, Element.Line line, double frontSeconds) {
        onto(port, line.section());
        waves.through(port, workspace.wave(line.section()).decay(line.lengthMetres()));
        later(port, frontSeconds);
    }

    /** Joins a part in series. */
    void series(int port, Element.Series series) {
        waves.join(port, twoPort.series(series.part(), references.get(port), workspace));
    }

    /** Joins a part across. */
    void shunt(int port, Element.Shunt shunt) {
        waves.join(port, twoPort.shunt(shunt.part(), references.get(port), workspace));
    }

    /**
     * Joins a stretch that the line shares with a neighbour. S11 is what comes back with its far side matched, S22 the same
     * from behind, and S12 S21 = (Γ(1) − S11)(1 − S22), with Γ(1) what comes back when all does behind it. A way goes as
     * often out through it as home, so it is all one how the product is shared out: √|S12 S21| is taken home.
     */
    void split(int port, Element.Split split, double frontSeconds) {
        CrossSection first = EvenOddSection.first(split).section();
        CrossSection behind = EvenOddSection.last(split).section();
        onto(port, first);
        ComplexBlock near = reflection(split, behind, 0);
        ComplexBlock product = reflection(split, behind, 1).minus(near);
        ComplexBlock far = reflection(split.turned(), first, 0);
        ComplexBlock home = new ComplexBlock(workspace.count());
        product.times(home.setOneMinus(far));
        for (int k = 0; k < workspace.count(); k++) {
            home.put(k, Math.sqrt(Math.hypot(product.re(k), product.im(k))), 0);
        }
        product.over(home).zeroWhereZero(home);
        waves.join(port, twoPort.set(near, home, product, far));
        references.set(port, impedance(behind, workspace));
        later(port, frontSeconds);
    }

    private ComplexBlock reflection(Element.Split split, CrossSection behind, double reflection) {
        ReflectionRecursion wave = ReflectionRecursion.onLine(behind, reflection, workspace);
        split.accept(wave);
        return new ComplexBlock(workspace.count()).set(wave.reflection());
    }

    /** Joins a place through which nothing goes: 1 comes back from an open, −1 from a contact, on both sides. */
    void wall(int port, double reflection) {
        waves.join(port, twoPort.wall(reflection));
    }

    /** Joins a branch across the line. @return the port at which the branch goes on, on the reference of the line */
    int branch(int port) {
        double y = 2.0 / 3;
        return fork(port, new double[][] {{y - 1, y, y}, {y, y - 1, y}, {y, y, y - 1}});
    }

    /** Joins a divider of isolated legs. @return the port at which its leg goes on */
    int divider(int port, Element.Divider divider) {
        onto(port, new ComplexBlock(workspace.count()).fill(divider.impedanceOhms()));
        double t = divider.throughAmplitude();
        double u = divider.legAmplitude();
        return fork(port, new double[][] {{0, t, u}, {t, 0, 0}, {u, 0, 0}});
    }

    private int fork(int port, double[][] three) {
        int made = waves.fork(port, three);
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < made; i++) {
            seconds.get(i).add(seconds(i, port));
            times.add(seconds(port, i));
        }
        times.add(0.0);
        seconds.add(times);
        references.add(references.get(port));
        return made;
    }

    /** Closes a port with a load; it counts no longer. Ports after it move down by one. */
    void close(int port, Load load) {
        close(port, ReflectionRecursion.atLoad(load, references.get(port), workspace));
    }

    /** Closes a port with all of a circuit, which begins with a split stretch of a line. */
    void close(int port, Network network, CrossSection first) {
        onto(port, first);
        ReflectionRecursion wave = ReflectionRecursion.through(network, 1, workspace);
        wave.onto(first);
        close(port, wave);
    }

    private void close(int port, ReflectionRecursion wave) {
        waves.close(port, wave.reflection());
        seconds.remove(port);
        seconds.forEach(row -> row.remove(port));
        references.remove(port);
    }
}
