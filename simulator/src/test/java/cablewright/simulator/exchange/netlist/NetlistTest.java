// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.netlist;

import static cablewright.simulator.TestCables.cable;
import static cablewright.simulator.TestCables.constants;
import static cablewright.simulator.TestCables.lossless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Lumped.Joined;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.DebyeTerm;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.RectangularPulse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a netlist says, and what it says that it leaves out. That it means what it says, ngspice shows. */
class NetlistTest {

    private static final Set<String> PLAIN = Set.of();
    private final NetlistSetup setup = new NetlistSetup("a line", 75, new RaisedCosineStep(2e-9), 1e-6);

    private Netlist of(Load load, Element... elements) {
        return Netlist.of(new Network(List.of(elements), load), setup);
    }

    private static Element line(ConstantsSection section) {
        return new Element.Line(section, 10, PLAIN);
    }

    private static final ConstantsSection LOSSLESS = ConstantsSection.lossless(75, 0.85);

    @Test
    void losslessLineIsAnElementOfItsImpedanceAndDelay() {
        String text = of(new Load.Open(), line(LOSSLESS)).text();
        String t = text.lines().filter(x -> x.startsWith("T")).findFirst().orElseThrow();
        assertEquals(75, Double.parseDouble(t.replaceAll(".*Z0=(\\S+).*", "$1")), 1e-12);
        assertEquals(10 / (0.85 * 299_792_458.0), Double.parseDouble(t.replaceAll(".*TD=(\\S+).*", "$1")), 1e-20);
        assertEquals("a line", text.lines().findFirst().orElseThrow());
        assertTrue(text.endsWith(".save v(port)\n.print tran v(port)\n.end\n"));
    }

    @Test
    void wholeLineHasNoNotices() {
        ConstantsSection rlc = new ConstantsSection(0.1, 3e-7, 0, 0, 5e-11, List.of());
        Netlist netlist = of(new Load.Part(Lumped.resistor(75)), line(rlc), line(LOSSLESS));
        assertEquals(List.of(), netlist.notices());
        assertTrue(netlist.text().contains("LTRA(R=0.1 L=3.0E-7 G=0 C=5.0E-11 LEN=10.0"), netlist.text());
    }

    @Test
    void whatCannotBeCarriedIsSaidWhereItStandsAndInTheNotices() {
        ConstantsSection skin = new ConstantsSection(0.1, 3e-7, 1e-5, 0, 5e-11, List.of());
        ConstantsSection relaxing = new ConstantsSection(0.1, 3e-7, 0, 0, 5e-11, List.of(new DebyeTerm(1e-12, 1e-9)));
        ConstantsSection leaking = new ConstantsSection(0.1, 3e-7, 0, 1e-6, 5e-11, List.of());
        ConstantsSection lossy = new ConstantsSection(0.1, 3e-7, 0, 0, 5e-11, List.of());
        Network leg = new Network(List.of(), new Load.Open());
        Element divider = new Element.Divider(75, 0.7, 0.7, leg, PLAIN);
        assertNotice("Loss that rises with frequency", of(new Load.Open(), line(skin)));
        assertNotice("Loss that rises with frequency", of(new Load.Open(), line(relaxing)));
        assertNotice("A conductance of 1.000e-06 S a metre", of(new Load.Open(), line(leaking)));
        assertNotice("The endless line at the end", of(new Load.Endless(lossy), line(LOSSLESS)));
        assertNotice("An ideal divider matched to 75", of(new Load.Open(), divider));
        assertEquals(List.of(), of(new Load.Endless(LOSSLESS), line(LOSSLESS)).notices());
    }

    private static void assertNotice(String start, Netlist netlist) {
        assertEquals(1, netlist.notices().size());
        String notice = netlist.notices().get(0);
        assertTrue(notice.startsWith(start) && notice.endsWith("."), notice);
        String said = Character.toLowerCase(notice.charAt(0)) + notice.substring(1, notice.length() - 1);
        assertTrue(netlist.text().contains("* left out: " + said + "\n"), netlist.text());
    }

    /** Beyond a break or a contact nothing is told; a branch's break does not end the trunk. */
    @Test
    void nothingIsToldBeyondABreak() {
        Element beyond = new Element.Shunt(Lumped.resistor(33), PLAIN);
        assertFalse(of(new Load.Short(), line(LOSSLESS), new Element.Break(PLAIN), beyond)
                .text()
                .contains("33.0"));
        assertFalse(of(new Load.Short(), line(LOSSLESS), new Element.Contact(PLAIN), beyond)
                .text()
                .contains("33.0"));
        Network branch = new Network(List.of(new Element.Break(PLAIN)), new Load.Open());
        assertTrue(of(new Load.Short(), new Element.Branch(branch, PLAIN), beyond)
                .text()
                .contains("33.0"));
    }

    @Test
    void partsOfNoSizeAreWires() {
        Lumped chain =
                new Lumped(Joined.SERIES, OptionalDouble.of(0), OptionalDouble.of(1e-9), OptionalDouble.of(2e-12));
        String text = of(
                        new Load.Part(Lumped.resistor(0)),
                        new Element.Series(Lumped.resistor(0), PLAIN),
                        new Element.Series(chain, PLAIN))
                .text();
        assertTrue(text.contains("\nL1 port n2 1.0E-9\nC2 n2 n1 2.0E-12\nV3 n1 0 0\n"), text);
        assertFalse(text.lines().anyMatch(line -> line.startsWith("R") && line.endsWith(" 0.0")));
    }

    @Test
    void stepOfTimeIsOursUnlessGiven() {
        NetlistSetup given = new NetlistSetup("x", 75, setup.stimulus(), 1e-6, OptionalDouble.of(1e-10));
        assertTrue(Netlist.of(new Network(List.of(), new Load.Open()), given)
                .text()
                .contains(".tran 1.0E-10 1.0E-6 0 1.0E-10 uic"));
        double edge = setup.stimulus().shortestEdgeSeconds();
        assertTrue(of(new Load.Open()).text().contains(".tran " + edge / 200 + " "));
    }

    @Test
    void flatTopOfARectangularPulseIsOnePiece() {
        NetlistSetup pulse = new NetlistSetup("x", 75, new RectangularPulse(1e-6, 2e-9), 2e-6);
        String text = Netlist.of(new Network(List.of(), new Load.Open()), pulse).text();
        String source = text.substring(text.indexOf("PWL("), text.indexOf(')', text.indexOf("PWL(")));
        int numbers = source.replace("PWL(", "").replace("+", " ").strip().split("\\s+").length;
        assertEquals(2 * (1 + 64 + 65), numbers);
    }

    /** A cable's events arrive as parts; the break hides what lies beyond. */
    @Test
    void cableIsToldFromItsNearEnd() {
        Cable broken = cable(
                lossless(75, 2e8),
                100,
                FarEnd.Terminated.byOhms(75),
                new BrokenConductor("cut", 40, OptionalDouble.empty()));
        Netlist netlist = Netlist.of(broken, setup);
        assertEquals(1, netlist.text().lines().filter(x -> x.startsWith("T")).count());
        assertFalse(Netlist.of(cable(constants(0.1, 3e-7, 1e-5, 0, 5e-11), 10, new FarEnd.Open()), setup)
                .notices()
                .isEmpty());
    }

    @Test
    void tooManyElementsAndValuesThatCannotBeAreRefused() {
        List<Element> many = new ArrayList<>(Collections.nCopies(20_001, line(LOSSLESS)));
        assertThrows(IllegalArgumentException.class, () -> Netlist.of(new Network(many, new Load.Open()), setup));
        RaisedCosineStep step = new RaisedCosineStep(2e-9);
        assertThrows(IllegalArgumentException.class, () -> new NetlistSetup("two\nlines", 75, step, 1e-6));
        assertThrows(IllegalArgumentException.class, () -> new NetlistSetup("x", 0, step, 1e-6));
        assertThrows(IllegalArgumentException.class, () -> new NetlistSetup("x", 75, step, 0));
        assertThrows(
                IllegalArgumentException.class, () -> new NetlistSetup("x", 75, step, 1e-6, OptionalDouble.of(-1)));
        assertThrows(IllegalArgumentException.class, () -> new NetlistSetup("x", 75, null, 1e-6));
    }
}
