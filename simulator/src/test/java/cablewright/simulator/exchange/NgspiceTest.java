// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cablewright.simulator.cable.Lumped;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.exchange.netlist.Netlist;
import cablewright.simulator.exchange.netlist.NetlistSetup;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.ReflectionSolver;
import cablewright.simulator.wave.EvenTimes;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.RectangularPulse;
import cablewright.simulator.wave.Stimulus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The line engine against a general circuit simulator, ngspice, on the netlists that we write: RMS of the difference over the
 * record, over the outgoing wave. ngspice convolves lossy lines by J. S. Roychowdhury, A. R. Newton and D. O. Pederson, IEEE
 * Trans. CAD 13(1), 96–104 (1994).
 */
class NgspiceTest {

    private static final double ALLOWED = 2e-4;
    private static final int TIMES = 4001;
    private static final Set<String> PLAIN = Set.of();

    @TempDir
    private Path folder;

    private record Case(String name, Network network, double sourceOhms, Stimulus stimulus, double recordSeconds) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static CrossSection lossless(double ohms) {
        return ConstantsSection.lossless(ohms, 2e8 / 299_792_458.0);
    }

    private static Element line(double ohms, double metres) {
        return new Element.Line(lossless(ohms), metres, PLAIN);
    }

    private static Element rlc(double ohmsPerMetre, double metres) {
        return new Element.Line(new ConstantsSection(ohmsPerMetre, 0.25e-6, 0, 0, 100e-12, List.of()), metres, PLAIN);
    }

    private static Element series(Lumped part) {
        return new Element.Series(part, PLAIN);
    }

    private static Element shunt(Lumped part) {
        return new Element.Shunt(part, PLAIN);
    }

    private static Element branch(Load end, Element... elements) {
        return new Element.Branch(new Network(List.of(elements), end), PLAIN);
    }

    private static Load ohms(double ohms) {
        return new Load.Part(Lumped.resistor(ohms));
    }

    private static Case of(
            String name, double sourceOhms, Stimulus stimulus, double seconds, Load load, Element... elements) {
        return new Case(name, new Network(List.of(elements), load), sourceOhms, stimulus, seconds);
    }

    static Stream<Case> networks() {
        Stimulus step = new RaisedCosineStep(2e-9);
        return Stream.of(
                of("matched line, mismatched end", 50, step, 400e-9, ohms(100), line(50, 20)),
                of("mismatched source, short end", 150, step, 800e-9, new Load.Short(), line(50, 20)),
                of("open end, half-sine", 20, new HalfSine(10e-9), 600e-9, new Load.Open(), line(75, 12)),
                of("line of R, L and C", 50, new HalfSine(10e-9), 600e-9, ohms(80), rlc(0.5, 25)),
                of("lossy line, open, mismatched source", 75, step, 800e-9, new Load.Open(), rlc(2, 20)),
                of(
                        "capacitor across, coil in series",
                        50,
                        new GaussianPulse(5e-9),
                        500e-9,
                        ohms(50),
                        line(50, 8),
                        shunt(Lumped.capacitor(20e-12)),
                        line(50, 7),
                        series(Lumped.inductor(150e-9)),
                        line(50, 6)),
                of(
                        "capacitor in series, coil across",
                        50,
                        new RectangularPulse(40e-9, 3e-9),
                        600e-9,
                        ohms(50),
                        line(50, 8),
                        series(Lumped.capacitor(200e-12)),
                        line(50, 7),
                        shunt(Lumped.inductor(1e-6)),
                        line(50, 6)),
                of(
                        "branches, open and short",
                        75,
                        step,
                        600e-9,
                        ohms(75),
                        line(75, 10),
                        branch(new Load.Open(), line(75, 4)),
                        line(75, 9),
                        branch(new Load.Short(), line(100, 3), series(Lumped.resistor(5))),
                        line(75, 7)),
                of(
                        "sections of many impedances",
                        60,
                        new GaussianStep(2e-9),
                        500e-9,
                        ohms(90),
                        line(75, 5),
                        line(50, 2),
                        line(110, 3),
                        line(40, 1.5),
                        line(75, 4)),
                of(
                        "resistor and capacitor at the end",
                        75,
                        step,
                        500e-9,
                        new Load.Part(Lumped.resistorAcrossCapacitor(120, 100e-12)),
                        line(75, 15)),
                of(
                        "corroded joint on a lossy line, endless beyond",
                        50,
                        step,
                        500e-9,
                        new Load.Endless(lossless(75)),
                        rlc(0.2, 12),
                        series(Lumped.resistorAcrossCapacitor(30, 50e-12)),
                        rlc(0.2, 10)));
    }

    @ParameterizedTest
    @MethodSource("networks")
    void netlistRunInNgspiceGivesTheEnginesWaveform(Case tried) throws IOException, InterruptedException {
        assumeTrue(
                isThere() || System.getenv("CI") != null,
                "ngspice is not installed, so netlists are not run; its Debian package is ngspice");
        EvenTimes warm = EvenTimes.of(port(tried), tried.stimulus(), tried.recordSeconds(), TIMES);
        long start = System.nanoTime();
        EvenTimes ours = EvenTimes.of(port(tried), tried.stimulus(), tried.recordSeconds(), TIMES);
        double ourSeconds = (System.nanoTime() - start) / 1e9;
        Netlist netlist = Netlist.of(
                tried.network(),
                new NetlistSetup(tried.name(), tried.sourceOhms(), tried.stimulus(), tried.recordSeconds()));
        assertTrue(netlist.notices().isEmpty(), netlist.notices().toString());
        start = System.nanoTime();
        double[][] theirs = run(netlist);
        double theirSeconds = (System.nanoTime() - start) / 1e9;
        double rms = difference(ours, theirs);
        System.out.printf(
                "%-48s RMS difference %.1e of the outgoing wave; engine %.3f s, ngspice %.2f s%n",
                tried.name(), rms, ourSeconds, theirSeconds);
        assertTrue(warm.reflected().count() == TIMES && rms <= ALLOWED, "RMS difference " + rms);
    }

    private static PortResponse port(Case tried) {
        return new PortResponse() {
            @Override
            public double referenceOhms() {
                return tried.sourceOhms();
            }

            @Override
            public Optional<ContourGrid> nativeGrid() {
                return Optional.empty();
            }

            @Override
            public ComplexArray reflection(ContourGrid grid, int count) {
                Frequencies at = grid.points().slice(0, count);
                return ReflectionSolver.reflection(tried.network(), tried.sourceOhms(), at);
            }
        };
    }

    private static boolean isThere() throws InterruptedException {
        try {
            return new ProcessBuilder("ngspice", "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        }
    }

    private double[][] run(Netlist netlist) throws IOException, InterruptedException {
        Path circuit = folder.resolve("line.cir");
        Path result = folder.resolve("line.raw");
        Path log = folder.resolve("line.log");
        Files.writeString(circuit, netlist.text());
        ProcessBuilder builder = new ProcessBuilder("ngspice", "-b", "-r", result.toString(), circuit.toString());
        builder.environment().put("SPICE_ASCIIRAWFILE", "1");
        builder.redirectErrorStream(true).redirectOutput(log.toFile());
        Process process = builder.start();
        if (!process.waitFor(120, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("ngspice took more than 120 s");
        }
        assertTrue(process.exitValue() == 0 && Files.exists(result), Files.readString(log));
        return values(Files.readAllLines(result));
    }

    /** Times and port voltages of an ASCII raw file: after "Values:", an index and a time, then the voltage. */
    private static double[][] values(List<String> lines) {
        List<double[]> rows = new ArrayList<>();
        int at = lines.indexOf("Values:") + 1;
        while (at + 1 < lines.size()) {
            String[] first = lines.get(at).strip().split("\\s+");
            if (first.length == 2) {
                rows.add(new double[] {
                    Double.parseDouble(first[1]),
                    Double.parseDouble(lines.get(at + 1).strip())
                });
            }
            at += first.length == 2 ? 2 : 1;
        }
        return rows.toArray(double[][]::new);
    }

    private static double difference(EvenTimes ours, double[][] theirs) {
        double sum = 0;
        int row = 0;
        for (int i = 0; i < TIMES; i++) {
            double t = ours.reflected().time(i);
            while (row + 2 < theirs.length && theirs[row + 1][0] < t) {
                row++;
            }
            double share = (t - theirs[row][0]) / (theirs[row + 1][0] - theirs[row][0]);
            double volts = theirs[row][1] + share * (theirs[row + 1][1] - theirs[row][1]);
            double d = ours.outgoing().sample(i) + ours.reflected().sample(i) - volts;
            sum += d * d;
        }
        return Math.sqrt(sum / TIMES);
    }
}
