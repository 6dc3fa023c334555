// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.PortVoltage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * What holds for every passive line, on cables of every kind that a file can hold. The long run:
 *
 * <pre>mvn -pl lessons -am test -Dtest=RandomCablesTest -Dsurefire.failIfNoSpecifiedTests=false -Dcablewright.cables=100000</pre>
 */
class RandomCablesTest {

    private static final int CABLES = Integer.getInteger("cablewright.cables", 100);
    private static final int CABLES_FOR_ONE_TRACE = 20;
    private static final double OHMS = 75;
    private static final double[] SWEEP = {10, 1e3, 1e5, 1e6, 7.7e6, 3e7, 1e8, 4.1e8, 1e9};

    private static final double LEAD_METRES = 60;
    private static final double LEAD_VELOCITY = 0.8;
    private static final double LEAD_SECONDS = 2 * LEAD_METRES / (LEAD_VELOCITY * 299_792_458.0);

    /** Passivity: a line without a source sends back no more than it gets, at any frequency. */
    @Test
    void everyReflectionIsANumberAndAtMostOne() {
        int refused = 0;
        for (long seed = 0; seed < CABLES; seed++) {
            Optional<Cable> cable = sound(seed);
            if (cable.isEmpty()) {
                refused++;
                continue;
            }
            ComplexArray gamma = new SimulatedPort(cable.get(), OHMS).sweep(SWEEP);
            for (int k = 0; k < SWEEP.length; k++) {
                double size = gamma.magnitude(k);
                assertTrue(size <= 1 + 1e-12, "seed " + seed + ", " + SWEEP[k] + " Hz: |Γ| is " + size);
            }
        }
        assertTrue(refused < CABLES / 2, refused + " of " + CABLES + " can't be built");
    }

    /** Causality behind a lead without loss of known delay, and energy: no more comes back than was sent. */
    @Test
    void nothingComesBackBeforeItsTimeOrWithMoreEnergy() {
        GaussianPulse pulse = new GaussianPulse(40e-9);
        for (long seed = 0; seed < CABLES; seed += CABLES_FOR_ONE_TRACE) {
            Optional<Cable> cable = sound(seed);
            if (cable.isEmpty()) {
                continue;
            }
            PortVoltage voltage = PortVoltage.of(behindLead(cable.get(), pulse.shortestEdgeSeconds()), pulse, 4e-6, 20);
            double sent = 0;
            double back = 0;
            for (int m = 0; m < voltage.reflected().count(); m++) {
                double volts = voltage.reflected().sample(m);
                assertTrue(Double.isFinite(volts), "seed " + seed);
                if (voltage.reflected().time(m) < LEAD_SECONDS) {
                    assertEquals(
                            0,
                            volts,
                            1e-8,
                            "seed " + seed + " at " + voltage.reflected().time(m) + " s");
                }
                sent += Math.pow(voltage.outgoing().sample(m), 2);
                back += volts * volts;
            }
            assertTrue(back <= sent * (1 + 1e-7), "seed " + seed + ": " + back / sent + " of the energy comes back");
        }
    }

    /** A cable; empty where what was drawn can't be done to its types, which is refused in words. */
    private static Optional<Cable> sound(long seed) {
        Cable cable = new AnyCable(new SplittableRandom(seed)).draw();
        try {
            new SimulatedPort(cable, OHMS).sweep(1e6);
            return Optional.of(cable);
        } catch (IllegalArgumentException e) {
            assertTrue(e.getMessage().length() > 20, "seed " + seed + ": " + e.getMessage());
            return Optional.empty();
        }
    }

    private static PortResponse behindLead(Cable cable, double edgeSeconds) {
        Network network = CableCompiler.compile(cable, ProfileSteps.forEdge(edgeSeconds));
        List<Element> elements = new ArrayList<>();
        elements.add(new Element.Line(ConstantsSection.lossless(OHMS, LEAD_VELOCITY), LEAD_METRES, Set.of()));
        elements.addAll(network.elements());
        Network whole = new Network(elements, network.load());
        PropagationCache memory = new PropagationCache();
        return new PortResponse() {
            @Override
            public double referenceOhms() {
                return OHMS;
            }

            @Override
            public Optional<ContourGrid> nativeGrid() {
                return Optional.empty();
            }

            @Override
            public ComplexArray reflection(ContourGrid grid, int count) {
                return memory.reflection(whole, OHMS, grid, count);
            }
        };
    }
}
