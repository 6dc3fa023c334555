// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.TestCables;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BuildOut;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Housing;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.explanation.CableNotices;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Water;
import cablewright.simulator.notice.NoticeKind;
import cablewright.simulator.port.SimulatedPort;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every event's element against its formula. Series Z: ρ = Z/(Z + 2 Z0); shunt Y: ρ = −Y Z0/(2 + Y Z0) (Pozar, Microwave
 * Engineering, 4th ed., sec. 4.3, number from memory); the figures were computed from them at 25 digits.
 */
class EventsAgainstFormulasTest {

    private static final double TINY = 1e-9;

    private static ComplexArray at(Cable line, double source, double hertz) {
        return new SimulatedPort(line, source).sweep(hertz);
    }

    /** An event alone, at the port of a matched line. */
    private static ComplexArray alone(double ohms, double hertz, Event event) {
        return at(cable(lossless(ohms, 2e8), 1, FarEnd.Terminated.byOhms(ohms), event), ohms, hertz);
    }

    @ParameterizedTest(name = "{0} ohm across 75")
    @CsvSource({"10, -0.789473684", "75, -0.333333333", "1000, -0.0361445783"})
    void shuntResistanceOn75(double ohms, double expected) {
        Event event = new TouchingConductors("x", 0, OptionalDouble.of(ohms));
        assertEquals(expected, alone(75, 1e6, event).re(0), TINY);
    }

    @ParameterizedTest(name = "{0} ohm in 75")
    @CsvSource({"1, 0.00662251656", "10, 0.0625", "75, 0.333333333", "1000, 0.869565217"})
    void seriesResistanceOn75(double ohms, double expected) {
        Event event = new CorrodedJoint("x", 0, ohms, OptionalDouble.empty());
        assertEquals(expected, alone(75, 1e6, event).re(0), TINY);
    }

    @ParameterizedTest(name = "10 pF across 75 at {0} Hz")
    @CsvSource({"10e6, -0.00055485721, -0.023548871", "100e6, -0.052596547, -0.22322668"})
    void shuntCapacitanceOn75(double hertz, double re, double im) {
        ComplexArray gamma = alone(75, hertz, new ShuntPart("x", 0, Lumped.capacitor(10e-12)));
        assertEquals(re, gamma.re(0), TINY);
        assertEquals(im, gamma.im(0), TINY);
    }

    @Test
    void seriesInductanceOf100NanohenriesOn75At100Megahertz() {
        ComplexArray gamma = alone(75, 100e6, new SeriesPart("x", 0, Lumped.inductor(100e-9)));
        assertEquals(0.14926896, gamma.re(0), 1e-8);
        assertEquals(0.35635339, gamma.im(0), 1e-8);
    }

    @Test
    void seriesCapacitorIsAnOpenToSlowWavesAndNothingToFastOnes() {
        Event gap = new OneSideOpen("x", 0, OptionalDouble.of(100e-12));
        assertEquals(1, alone(100, 100, gap).magnitude(0), 1e-6);
        // 1/(1 + sτ) with τ = 2 Z0 C.
        double wt = 2 * Math.PI * 1e8 * 2 * 100 * 100e-12;
        assertEquals(1 / Math.hypot(1, wt), alone(100, 1e8, gap).magnitude(0), TINY);
    }

    /** 88 mH on 100 Ω: τ = L/(2 Z0) = 0.44 ms; at f = 1/(2πτ) |ρ| = 1/√2. */
    @Test
    void loadCoilHasItsTimeConstant() {
        Event coil = new LoadCoil("x", 0, 88e-3, 0, 0);
        double corner = 1 / (2 * Math.PI * 0.44e-3);
        assertEquals(Math.sqrt(0.5), alone(100, corner, coil).magnitude(0), 1e-9);
        assertTrue(alone(100, 1e6, coil).magnitude(0) > 0.9999);
    }

    /** fc = 1/(π√(L C)) of a loaded line: H88 with C = 94.318182 nF a section cuts off at 3493.9 Hz. */
    @Test
    void loadedLineStopsAtItsCutOff() {
        double inductance = 88e-3;
        double capacitance = 94.318182e-9;
        ArrayList<Event> coils = new ArrayList<>();
        double section = 1828.8;
        int count = 12;
        for (int i = 0; i < count; i++) {
            coils.add(new LoadCoil("coil-" + i, (i + 0.5) * section, inductance, 0, 0));
        }
        // Line inductance made negligible, so that the formula's own assumption holds.
        CableType type = TestCables.constants(0, 1e-12, 0, 0, capacitance / section);
        Cable line = new Cable(
                "Loaded loop", List.of(new Run(type, count * section)), coils, FarEnd.Terminated.byOhms(965.92549));
        SimulatedPort port = new SimulatedPort(line, 965.92549);
        double cutOff = 3493.9049;
        assertEquals(cutOff, 1 / (Math.PI * Math.sqrt(inductance * capacitance)), 0.01);
        assertTrue(port.sweep(0.4 * cutOff).magnitude(0) < 0.5, "passes below");
        assertTrue(port.sweep(1.1 * cutOff).magnitude(0) > 0.999, "stops above");
    }

    /** T = 2/(2 + j tan θ) through an open stub of the line's own impedance: |ρ| at 45° = 0.447213595. */
    @Test
    void openStubAt45Degrees() {
        Cable branch = cable(lossless(100, 2e8), 10, new FarEnd.Open());
        double eighthWave = 2e8 / (8 * 10);
        ComplexArray gamma = alone(100, eighthWave, new BridgedTap("x", 0, branch));
        assertEquals(0.447213595, gamma.magnitude(0), TINY);
    }

    /** A quarter-wave open stub is a short: f = v/(4l). */
    @Test
    void openStubShortsTheLineAtAQuarterWave() {
        Cable branch = cable(lossless(100, 2e8), 10, new FarEnd.Open());
        ComplexArray gamma = alone(100, 2e8 / 40, new BridgedTap("x", 0, branch));
        assertEquals(-1, gamma.re(0), 1e-6);
    }

    /** Excess L of a splice in balance with its C, L = C Z0², reflects only in the third order of frequency. */
    @Test
    void balancedSpliceHardlyReflects() {
        double c = 1e-12;
        assertTrue(alone(75, 1e8, new Splice("x", 0, c * 75 * 75, c, 0)).magnitude(0) < 2e-5);
        assertTrue(alone(75, 1e8, new Splice("x", 0, c * 75 * 75, 0, 0)).magnitude(0) > 2e-2);
    }

    /** A short length of line of another impedance, seen long: ρ ≈ jωl/c (Z/Z0 − Z0/Z)/2. */
    @Test
    void connectorIsAShortLengthOfItsImpedance() {
        double hertz = 1e7;
        double length = 0.03;
        ComplexArray gamma = alone(75, hertz, new Connector("x", 0, 60, length, 0));
        double expected = 2 * Math.PI * hertz * length / 299_792_458.0 * Math.abs(60.0 / 75 - 75.0 / 60) / 2;
        assertEquals(expected, gamma.magnitude(0), 0.001 * expected);
    }

    @Test
    void contactResistanceOfAConnectorShowsAtLowFrequency() {
        ComplexArray gamma = alone(75, 10, new Connector("x", 0, 75, 0.03, 10));
        assertEquals(0.0625, gamma.re(0), 1e-7);
    }

    /** Shunt L = Z0/(4πf): ρ = −1/(1 + 2sL/Z0), so |ρ| = 1/√2 at f. */
    @Test
    void tapShortsWhatIsBelowItsLowCorner() {
        Event tap = new Tap("x", 0, 75, 1e-6, 0, 5e6);
        assertEquals(Math.sqrt(0.5), alone(75, 5e6, tap).magnitude(0), 1e-4);
        assertTrue(alone(75, 5e3, tap).magnitude(0) > 0.999);
    }

    @Test
    void housingStopsALongPulseAndPassesAShortOne() {
        Event housing = new Housing("x", 0, 75, 1, 0, 5e6);
        assertTrue(alone(75, 5e4, housing).magnitude(0) > 0.99);
        assertTrue(alone(75, 5e8, housing).magnitude(0) < 0.02);
    }

    @Test
    void buildOutIsHalfItsResistanceItsCapacitanceAndTheOtherHalf() {
        Event buildOut = new BuildOut("x", 0, 10e-9, 200);
        double wc = 2 * Math.PI * 1e5 * 10e-9;
        // Y of the middle and last part: jωC + 1/(R/2 + Z0); then R/2 more.
        Complex y = new Complex(1 / 200.0, wc);
        Complex z = y.reciprocal().add(100);
        Complex gamma = z.subtract(100).divide(z.add(100));
        assertEquals(gamma.getReal(), alone(100, 1e5, buildOut).re(0), TINY);
        assertEquals(gamma.getImaginary(), alone(100, 1e5, buildOut).im(0), TINY);
    }

    /** A corroded joint's oxide lets the fast edge pass: Z = R/(1 + sRC). */
    @Test
    void oxideCapacitanceHidesACorrodedJointFromFastWaves() {
        Event joint = new CorrodedJoint("x", 0, 100, OptionalDouble.of(1e-9));
        assertEquals(100.0 / 250, alone(75, 1e3, joint).magnitude(0), 1e-5);
        assertTrue(alone(75, 1e9, joint).magnitude(0) < 0.0011);
    }

    /** Off-centre coax of 75 Ω foam: e = 0.5 gives ρ = −0.062197 (exact formula of the eccentric coax). */
    @Test
    void launchIntoAnOffCentreLineIsItsMismatch() {
        var type = Catalogue.standard().type("drop-6-foam");
        Event core = new OffCentreCore("x", 0, 500, 0.5, Profile.FLAT, OptionalDouble.empty());
        Cable line = cable(type, 500, new FarEnd.Endless(type), core);
        double z = type.section().impedanceOhms();
        assertEquals(75, z, 0.01);
        // At 1 GHz the far edge has died away; what is left beside the launch is the inductance inside the metal.
        assertEquals(-0.062197, at(line, z, 1e9).re(0), 1.5e-3);
    }

    /** Mixed by Maxwell-Garnett, 5 % of water in VF 0.85 foam: ρ = −0.034837 (Sihvola 1999, from memory). */
    @Test
    void waterBetweenGrainsOfFoamFollowsMaxwellGarnett() {
        var section = Catalogue.standard().type("drop-6-foam").section();
        var wet = section.wet(WaterDistribution.MAXWELL_GARNETT, 0.05, new Water(20, 0));
        double rho = (wet.impedanceOhms() - section.impedanceOhms()) / (wet.impedanceOhms() + section.impedanceOhms());
        assertEquals(-0.034837, rho, 3e-4);
    }

    @Test
    void spreadPairRises() {
        var type = Catalogue.standard().type("pair-24");
        Cable line = cable(type, 50, new FarEnd.Endless(type), new SpreadPair("x", 20, 5, 1.6, Profile.FLAT));
        var spread = type.section().spread(1.6);
        assertTrue(spread.impedanceOhms() > 1.2 * type.section().impedanceOhms());
        assertTrue(spread.velocityFraction() > type.section().velocityFraction());
        assertEquals(3, CableCompiler.compile(line, 1e8).elements().size());
    }

    @Test
    void testLeadIsSeenButNotCounted() {
        Cable bare = cable(lossless(75, 2e8), 100, new FarEnd.Open());
        Cable led = new Cable(
                bare.title(),
                bare.runs(),
                bare.events(),
                bare.farEnd(),
                20,
                Optional.of(new TestLead(lossless(50, 2e8), 2)));
        assertEquals(100, led.lengthMetres(), 0);
        CableProfile profile = CableProfile.of(led, 1e9);
        assertEquals(2 / 2e8, profile.secondsTo(0), 1e-15);
        assertEquals(102 / 2e8, profile.secondsTo(100), 1e-15);
        assertEquals(25, profile.metresAt(27 / 2e8), 1e-9);
    }

    @Test
    void wetStretchIsSlowerAndSaysWhatItCosts() {
        var type = Catalogue.standard().type("drop-6-foam");
        Event water =
                new WaterIngress("w", 40, 10, 42, WaterDistribution.MAXWELL_GARNETT, 0.05, new Water(20, 0.02), 0);
        CableProfile profile = CableProfile.of(cable(type, 100, new FarEnd.Open(), water), 1e9);
        double dry = 100 / (0.85 * 299_792_458.0);
        // MG, 5 %: velocity 0.792771 of light, so ten metres cost 10 (1/0.792771 − 1/0.85)/c more.
        double extra = 10 * (1 / 0.792771 - 1 / 0.85) / 299_792_458.0;
        assertEquals(dry + extra, profile.secondsTo(100), 0.01 * extra);
    }

    @Test
    void modelOutsideItsRangeSaysSo() {
        var type = Catalogue.standard().type("hardline-500");
        List<CableNotices.Placed> quiet = CableNotices.of(cable(type, 100, new FarEnd.Open()), 1e9);
        List<CableNotices.Placed> loud = CableNotices.of(cable(type, 100, new FarEnd.Open()), 30e9);
        assertEquals(List.of(), quiet);
        assertTrue(loud.stream().anyMatch(p -> p.notice().kind() == NoticeKind.HIGHER_MODES), loud.toString());
        assertEquals(0, loud.get(0).startMetres(), 0);
        assertEquals(100, loud.get(0).endMetres(), 1e-9);
    }
}
