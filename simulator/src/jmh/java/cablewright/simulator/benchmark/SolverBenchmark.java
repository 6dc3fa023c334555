// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.benchmark;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.ReflectionSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.complex.Complex;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The reflection recursion against its peer, the textbook's chain matrices with complex numbers as objects. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SolverBenchmark {

    private static final int LINES = 60;
    private static final int COUNT = 2048;
    private final Frequencies frequencies =
            ContourGrid.forRecord(1e-6, 1e-10).points().slice(0, COUNT);
    private final double[] sRe = frequencies.real();
    private final double[] sIm = frequencies.imaginary();
    private final Network network = network();

    private static ConstantsSection section(int i) {
        double ohms = i % 2 == 0 ? 75 : 70;
        double slowness = 1 / (0.85 * 299_792_458.0);
        return new ConstantsSection(0.02, ohms * slowness, 1e-5, 0, slowness / ohms, List.of());
    }

    private static Network network() {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            elements.add(new Element.Line(section(i), 1 + 0.01 * i, Set.of()));
            elements.add(new Element.Series(Lumped.inductor(2e-9), Set.of()));
        }
        return new Network(elements, new Load.Part(Lumped.resistor(75)));
    }

    /** Γ of 60 lines and 60 inductors, nothing remembered. @return Γ at 2048 frequencies */
    @Benchmark
    public ComplexArray reflectionRecursion() {
        return ReflectionSolver.reflection(network, 75, frequencies);
    }

    /** The same by chain matrices. @return Γ at 2048 frequencies */
    @Benchmark
    public Complex[] chainMatrices() {
        Complex[] gamma = new Complex[COUNT];
        for (int k = 0; k < COUNT; k++) {
            Complex s = new Complex(sRe[k], sIm[k]);
            Complex v = new Complex(75);
            Complex i = Complex.ONE;
            for (int e = LINES - 1; e >= 0; e--) {
                v = v.add(i.multiply(s.multiply(2e-9)));
                ConstantsSection section = section(e);
                Complex z = s.multiply(section.inductanceHenriesPerMetre())
                        .add(s.sqrt().multiply(1e-5))
                        .add(0.02);
                Complex y = s.multiply(section.capacitanceFaradsPerMetre());
                Complex theta = z.multiply(y).sqrt().multiply(1 + 0.01 * e);
                Complex zc = z.divide(y).sqrt();
                Complex newV = v.multiply(theta.cosh()).add(i.multiply(zc).multiply(theta.sinh()));
                i = i.multiply(theta.cosh()).add(v.divide(zc).multiply(theta.sinh()));
                v = newV;
            }
            Complex impedance = v.divide(i);
            gamma[k] = impedance.subtract(75).divide(impedance.add(75));
        }
        return gamma;
    }
}
