// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.compile;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Lumped.Joined;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.BuildOut;
import cablewright.simulator.cable.hardware.ComponentVisitor;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Cross;
import cablewright.simulator.cable.hardware.Housing;
import cablewright.simulator.cable.hardware.InlineComponent;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.OneSideEarthed;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.split.CommonMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Makes the elements of what is put in the line, each as documented in its event. */
final class HardwareElements implements ComponentVisitor<List<Element>> {

    private final Cable cable;
    private final ProfileSteps steps;

    HardwareElements(Cable cable, ProfileSteps steps) {
        this.cable = cable;
        this.steps = steps;
    }

    List<Element> of(InlineComponent thing) {
        return thing.accept(this);
    }

    /** A branch has the temperature of the cable that it leaves. */
    private Network branch(Cable branch) {
        Cable atHand = new Cable(
                branch.title(), branch.runs(), branch.events(), branch.farEnd(), cable.celsius(), branch.testLead());
        return CableCompiler.compile(atHand, steps);
    }

    private static Lumped parallel(OptionalDouble r, OptionalDouble l, OptionalDouble c) {
        return new Lumped(Joined.PARALLEL, r, l, c);
    }

    private static OptionalDouble ifAny(double value) {
        return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    @Override
    public List<Element> splice(Splice event) {
        Set<String> by = Set.of(event.id());
        List<Element> half = new ArrayList<>();
        if (event.excessInductanceHenries() > 0 || event.seriesResistanceOhms() > 0) {
            half.add(new Element.Series(
                    new Lumped(
                            Joined.SERIES,
                            ifAny(event.seriesResistanceOhms() / 2),
                            ifAny(event.excessInductanceHenries() / 2),
                            OptionalDouble.empty()),
                    by));
        }
        List<Element> all = new ArrayList<>(half);
        if (event.excessCapacitanceFarads() > 0) {
            all.add(new Element.Shunt(Lumped.capacitor(event.excessCapacitanceFarads()), by));
        }
        all.addAll(half);
        return all;
    }

    @Override
    public List<Element> connector(Connector event) {
        Set<String> by = Set.of(event.id());
        CrossSection inside = ConstantsSection.lossless(event.impedanceOhms(), 1);
        if (event.contactResistanceOhms() == 0) {
            return List.of(new Element.Line(inside, event.lengthMetres(), by));
        }
        Element half = new Element.Line(inside, event.lengthMetres() / 2, by);
        return List.of(half, new Element.Series(Lumped.resistor(event.contactResistanceOhms()), by), half);
    }

    @Override
    public List<Element> corrodedJoint(CorrodedJoint event) {
        Lumped joint = parallel(
                OptionalDouble.of(event.seriesResistanceOhms()),
                OptionalDouble.empty(),
                event.oxideCapacitanceFarads());
        return List.of(new Element.Series(joint, Set.of(event.id())));
    }

    /** A matched resistive T with more across its middle: R1, then R2 and the rest across, then R1. */
    private static List<Element> matchedT(
            double ohms, double lossDecibels, double capacitance, double inductance, Set<String> by) {
        double k = Math.pow(10, lossDecibels / 20);
        Element arm = new Element.Series(Lumped.resistor(ohms * (k - 1) / (k + 1)), by);
        double across = 2 * ohms * k / (k * k - 1);
        Lumped middle = parallel(OptionalDouble.of(across), ifAny(inductance), ifAny(capacitance));
        return List.of(arm, new Element.Shunt(middle, by), arm);
    }

    @Override
    public List<Element> tap(Tap event) {
        double ohms = event.nominalImpedanceOhms();
        double inductance = event.lowCornerHertz() > 0 ? ohms / (4 * Math.PI * event.lowCornerHertz()) : 0;
        return matchedT(
                ohms, event.throughLossDecibels(), event.strayCapacitanceFarads(), inductance, Set.of(event.id()));
    }

    @Override
    public List<Element> splitter(Splitter event) {
        Set<String> by = Set.of(event.id());
        double through = Math.pow(10, -event.throughLossDecibels() / 20);
        double leg = Math.pow(10, -event.legLossDecibels() / 20);
        Network other = branch(event.leg());
        List<Element> elements = new ArrayList<>();
        if (event.strayCapacitanceFarads() > 0) {
            elements.add(new Element.Shunt(Lumped.capacitor(event.strayCapacitanceFarads()), by));
        }
        double seenLeg = event.inputAtFarSide() ? 0 : leg;
        elements.add(new Element.Divider(event.nominalImpedanceOhms(), through, seenLeg, other, by));
        if (event.inputAtFarSide()) {
            Collections.reverse(elements);
        }
        return elements;
    }

    @Override
    public List<Element> housing(Housing event) {
        Set<String> by = Set.of(event.id());
        double ohms = event.nominalImpedanceOhms();
        Element coupling = new Element.Series(Lumped.capacitor(1 / (2 * Math.PI * event.lowCornerHertz() * ohms)), by);
        List<Element> elements = new ArrayList<>();
        elements.add(coupling);
        elements.addAll(matchedT(ohms, event.throughLossDecibels(), event.strayCapacitanceFarads(), 0, by));
        elements.add(coupling);
        return elements;
    }

    @Override
    public List<Element> bridgedTap(BridgedTap event) {
        return List.of(new Element.Branch(branch(event.branch()), Set.of(event.id())));
    }

    @Override
    public List<Element> loadCoil(LoadCoil event) {
        Set<String> by = Set.of(event.id());
        Lumped winding = parallel(
                OptionalDouble.empty(),
                OptionalDouble.of(event.inductanceHenries()),
                ifAny(event.windingCapacitanceFarads()));
        List<Element> elements = new ArrayList<>();
        if (event.resistanceOhms() > 0) {
            elements.add(new Element.Series(Lumped.resistor(event.resistanceOhms() / 2), by));
        }
        elements.add(new Element.Series(winding, by));
        if (event.resistanceOhms() > 0) {
            elements.add(new Element.Series(Lumped.resistor(event.resistanceOhms() / 2), by));
        }
        return elements;
    }

    @Override
    public List<Element> buildOut(BuildOut event) {
        Set<String> by = Set.of(event.id());
        Element across = new Element.Shunt(Lumped.capacitor(event.capacitanceFarads()), by);
        if (event.resistanceOhms() == 0) {
            return List.of(across);
        }
        Element half = new Element.Series(Lumped.resistor(event.resistanceOhms() / 2), by);
        return List.of(half, across, half);
    }

    @Override
    public List<Element> brokenConductor(BrokenConductor event) {
        Set<String> by = Set.of(event.id());
        if (event.seriesResistanceOhms().isEmpty()) {
            return List.of(new Element.Break(by));
        }
        return List.of(
                new Element.Series(Lumped.resistor(event.seriesResistanceOhms().getAsDouble()), by));
    }

    @Override
    public List<Element> touchingConductors(TouchingConductors event) {
        Set<String> by = Set.of(event.id());
        if (event.shuntResistanceOhms().isEmpty()) {
            return List.of(new Element.Contact(by));
        }
        return List.of(
                new Element.Shunt(Lumped.resistor(event.shuntResistanceOhms().getAsDouble()), by));
    }

    @Override
    public List<Element> oneSideOpen(OneSideOpen event) {
        Set<String> by = Set.of(event.id());
        if (event.bridgingCapacitanceFarads().isPresent()) {
            Lumped gap = Lumped.capacitor(event.bridgingCapacitanceFarads().getAsDouble());
            return List.of(new Element.Series(gap, by));
        }
        double before = event.positionMetres();
        double behind = cable.lengthMetres() - before;
        if (before <= 0 || behind <= 0) {
            // With no length on one side the whole wire has nowhere to send its current.
            return List.of(new Element.Break(by));
        }
        CommonMode mode = commonMode(event);
        Lumped gap = new Lumped(
                Joined.SERIES,
                OptionalDouble.of(mode.breakOhms()),
                OptionalDouble.empty(),
                OptionalDouble.of(mode.breakFarads(before, behind)));
        return List.of(new Element.Series(gap, by));
    }

    private CommonMode commonMode(OneSideOpen event) {
        try {
            return CommonMode.of(pairAt(event.positionMetres()), CommonMode.NEIGHBOURS_OVER_SPACING);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "event \"" + event.id()
                            + "\": bridgingCapacitanceFarads is missing, and it can follow from a pair only; "
                            + "give it, or put the event on a pair",
                    e);
        }
    }

    private CrossSection pairAt(double metres) {
        return cable.runAt(metres).type().section();
    }

    @Override
    public List<Element> oneSideEarthed(OneSideEarthed event) {
        return contact(
                event,
                pair -> CommonMode.of(pair, CommonMode.NEIGHBOURS_OVER_SPACING),
                pair -> 4 * event.earthResistanceOhms());
    }

    @Override
    public List<Element> cross(Cross event) {
        return contact(
                event,
                pair -> CommonMode.againstPair(pair, CommonMode.NEIGHBOURS_OVER_SPACING),
                pair -> 4 * event.contactResistanceOhms() + pair.impedanceOhms() / 2);
    }

    /** A wire of the pair that touches something: the fault's own share, and the circuit which its current drives. */
    private List<Element> contact(
            InlineComponent event, Function<CrossSection, CommonMode> driven, ToDoubleFunction<CrossSection> own) {
        double before = event.startMetres();
        CrossSection pair = pairAt(before);
        try {
            CommonMode mode = driven.apply(pair);
            double ohms = own.applyAsDouble(pair) + mode.contactOhms(before, cable.lengthMetres() - before);
            Lumped across = new Lumped(
                    Joined.SERIES,
                    OptionalDouble.of(ohms),
                    OptionalDouble.empty(),
                    OptionalDouble.of(mode.contactFarads(cable.lengthMetres())));
            return List.of(new Element.Shunt(across, Set.of(event.id())));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "event \"" + event.id() + "\" is a fault of one wire of a pair; put it on a pair, not on a coax",
                    e);
        }
    }

    @Override
    public List<Element> seriesPart(SeriesPart event) {
        return List.of(new Element.Series(event.part(), Set.of(event.id())));
    }

    @Override
    public List<Element> shuntPart(ShuntPart event) {
        return List.of(new Element.Shunt(event.part(), Set.of(event.id())));
    }
}
