// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.ladder.LadderCells;
import cablewright.simulator.ladder.LadderSolver;
import cablewright.simulator.port.NetworkPort;
import cablewright.simulator.wave.EvenTimes;
import cablewright.simulator.wave.Stimulus;
import java.util.ArrayList;
import java.util.List;

/**
 * How a cable made of lumped sections compares with its lines, section count by section count: the ladder is stepped in time, the
 * lines are solved exactly.
 *
 * <p>A ladder has no loss that rises with frequency, so each line is first replaced by the four constants nearest to it
 * ({@link cablewright.simulator.circuit.LineConstants#near}); what that alone changes is stated apart. Voltages are those at the
 * port for an outgoing wave of 1 V. With n sections a wavelength, a section delays by asin(π/n)/(π/n) times what its length of line
 * does (O. J. Zobel's constant-k section, from memory); under π a wavelength nothing passes.
 *
 * @param hertz where wavelengths are counted, 1/(2w) of a pulse of width w at half height [Hz]
 * @param constantsVolts largest difference between the cable and its lines by constants [V]
 * @param rows one for each number of sections
 */
public record LadderComparison(double hertz, double constantsVolts, List<Row> rows) {

    /** Most products of a node and a step of time in one run. */
    public static final double MOST_NODE_STEPS = 4e8;

    private static final int STEPS_PER_EDGE = 64;
    private static final int STEPS_PER_SECTION = 4;

    /**
     * A ladder against the lines.
     *
     * @param perWavelength sections a wavelength, at least
     * @param sections sections in all, branches included
     * @param lateBy delay of a section over that of its length of line, less 1; infinite where nothing passes
     * @param worstVolts largest difference at the port [V]
     * @param rmsVolts root of the mean square of the difference [V]
     */
    public record Row(double perWavelength, int sections, double lateBy, double worstVolts, double rmsVolts) {}

    /** Copies the rows. */
    public LadderComparison {
        rows = List.copyOf(rows);
    }

    /**
     * Compares.
     *
     * @param tested the cable, seen from the tested end
     * @param sourceOhms resistance of the source [Ω]
     * @param stimulus the outgoing wave
     * @param recordSeconds how long to look [s]
     * @param perWavelength the numbers of sections a wavelength, each above 0
     * @return the comparison
     * @throws IllegalArgumentException if the cable has something that no lumped parts make, or a ladder would be too long
     */
    public static LadderComparison of(
            Cable tested, double sourceOhms, Stimulus stimulus, double recordSeconds, List<Double> perWavelength) {
        Network cable = CableCompiler.compile(tested, ProfileSteps.forEdge(stimulus.shortestEdgeSeconds()));
        Network lines = LadderCells.byConstants(cable);
        double hertz = 1 / (2 * stimulus.resolutionSeconds());
        List<Row> rows = new ArrayList<>();
        for (double count : perWavelength) {
            rows.add(row(lines, sourceOhms, stimulus, recordSeconds, hertz, count));
        }
        double step = stimulus.shortestEdgeSeconds() / STEPS_PER_EDGE;
        int steps = (int) Math.ceil(recordSeconds / step);
        double[] asIs = volts(new NetworkPort(cable, sourceOhms), stimulus, step, steps);
        double[] byConstants = volts(new NetworkPort(lines, sourceOhms), stimulus, step, steps);
        return new LadderComparison(hertz, worst(asIs, byConstants), rows);
    }

    private static Row row(
            Network lines, double sourceOhms, Stimulus stimulus, double seconds, double hertz, double perWavelength) {
        double delay = 1 / (hertz * perWavelength);
        int sections = sections(lines, delay);
        double step = Math.min(stimulus.shortestEdgeSeconds() / STEPS_PER_EDGE, delay / STEPS_PER_SECTION);
        int steps = (int) Math.ceil(seconds / step);
        if ((double) steps * sections > MOST_NODE_STEPS) {
            throw new IllegalArgumentException(
                    "a ladder of " + sections + " sections in " + steps
                            + " steps of time is too long; choose fewer sections a wavelength, a wider pulse or a shorter range");
        }
        LadderSolver solver = new LadderSolver(lines, LadderCells.byDelay(delay), sourceOhms, step);
        double[] ladder = solver.portVolts(t -> 2 * stimulus.at(t), steps);
        double[] exact = volts(new NetworkPort(lines, sourceOhms), stimulus, step, steps);
        double squares = 0;
        for (int i = 0; i <= steps; i++) {
            squares += (ladder[i] - exact[i]) * (ladder[i] - exact[i]);
        }
        return new Row(
                perWavelength,
                sections,
                LadderOrLine.lateness(Math.PI / perWavelength),
                worst(ladder, exact),
                Math.sqrt(squares / (steps + 1)));
    }

    private static int sections(Network network, double secondsPerSection) {
        int count = 0;
        for (Element element : network.elements()) {
            if (element instanceof Element.Line line) {
                count += LadderCells.byDelay(secondsPerSection).applyAsInt(line);
            } else if (element instanceof Element.Branch branch) {
                count += sections(branch.branch(), secondsPerSection);
            }
        }
        return count;
    }

    private static double[] volts(PortResponse port, Stimulus stimulus, double step, int steps) {
        EvenTimes times = EvenTimes.of(port, stimulus, steps * step, steps + 1);
        double[] volts = times.reflected().copyOfValues();
        for (int i = 0; i < volts.length; i++) {
            volts[i] += times.outgoing().sample(i);
        }
        return volts;
    }

    private static double worst(double[] a, double[] b) {
        double worst = 0;
        for (int i = 0; i < a.length; i++) {
            worst = Math.max(worst, Math.abs(a[i] - b[i]));
        }
        return worst;
    }
}
