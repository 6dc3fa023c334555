// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import cablewright.lessons.bench.edit.BenchChoices;
import cablewright.lessons.bench.edit.Copies;
import cablewright.lessons.bench.field.NumberField.Travel;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.condition.Split;
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
import cablewright.simulator.check.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The fields of things put in the line. What is allowed, and over what a slider runs, is stated on the components of the
 * events themselves.
 */
public final class EventFields implements ComponentVisitor<List<EventField>> {

    private static final double LEAST_STRETCH_METRES = 1e-3;

    private EventFields() {}

    /**
     * Lists the fields of an event.
     *
     * @param cable the cable on which it lies
     * @param event the event
     * @return its place first, then all else
     */
    public static List<EventField> of(Cable cable, Event event) {
        List<EventField> fields = new ArrayList<>();
        fields.add(place(cable, event));
        if (event instanceof LineCondition condition) {
            fields.addAll(ConditionFields.of(cable, condition));
        } else if (event instanceof InlineComponent component) {
            fields.addAll(component.accept(new EventFields()));
        }
        return fields;
    }

    private static NumberField place(Cable cable, Event event) {
        double fixed = event.endMetres() - event.startMetres();
        // A split that is never put right reaches the end wherever it begins.
        boolean toTheEnd = event instanceof Split s && !s.putRight();
        double room = cable.lengthMetres() - (toTheEnd ? Math.min(fixed, LEAST_STRETCH_METRES) : fixed);
        String key = event instanceof LineCondition ? "startMetres" : "positionMetres";
        return new NumberField(
                key,
                Measure.LENGTH,
                OptionalDouble.of(event.startMetres()),
                Range.between(0, room),
                new Travel(0, Math.max(room, 1e-3), false),
                false,
                metres -> event.movedTo(metres.getAsDouble()));
    }

    static NumberField number(Event event, String component) {
        return new NumberField(
                component,
                Measure.of(component),
                OptionalDouble.of((double) Copies.get(event, component)),
                Range.of(event.getClass(), component),
                Travel.of(event.getClass(), component),
                false,
                value -> Copies.with(event, component, value.getAsDouble()));
    }

    static NumberField optional(Event event, String component) {
        return new NumberField(
                component,
                Measure.of(component),
                (OptionalDouble) Copies.get(event, component),
                Range.of(event.getClass(), component),
                Travel.of(event.getClass(), component),
                true,
                value -> Copies.with(event, component, value));
    }

    @Override
    public List<EventField> splice(Splice event) {
        return List.of(
                number(event, "excessInductanceHenries"),
                number(event, "excessCapacitanceFarads"),
                number(event, "seriesResistanceOhms"));
    }

    @Override
    public List<EventField> connector(Connector event) {
        return List.of(
                number(event, "impedanceOhms"), number(event, "lengthMetres"), number(event, "contactResistanceOhms"));
    }

    @Override
    public List<EventField> corrodedJoint(CorrodedJoint event) {
        return List.of(number(event, "seriesResistanceOhms"), optional(event, "oxideCapacitanceFarads"));
    }

    @Override
    public List<EventField> tap(Tap event) {
        return List.of(
                number(event, "throughLossDecibels"),
                number(event, "strayCapacitanceFarads"),
                number(event, "lowCornerHertz"),
                number(event, "nominalImpedanceOhms"));
    }

    @Override
    public List<EventField> splitter(Splitter event) {
        List<EventField> fields = new ArrayList<>(List.of(
                number(event, "throughLossDecibels"),
                number(event, "legLossDecibels"),
                number(event, "strayCapacitanceFarads")));
        fields.addAll(BranchFields.of(event.leg(), leg -> Copies.with(event, "leg", leg)));
        fields.add(new ChoiceField(
                "inputSide",
                List.of("near", "far"),
                event.inputAtFarSide() ? "far" : "near",
                side -> Copies.with(event, "inputAtFarSide", side.equals("far"))));
        fields.add(number(event, "nominalImpedanceOhms"));
        return fields;
    }

    @Override
    public List<EventField> housing(Housing event) {
        return List.of(
                number(event, "throughLossDecibels"),
                number(event, "lowCornerHertz"),
                number(event, "strayCapacitanceFarads"),
                number(event, "nominalImpedanceOhms"));
    }

    @Override
    public List<EventField> bridgedTap(BridgedTap event) {
        return BranchFields.of(event.branch(), branch -> Copies.with(event, "branch", branch));
    }

    @Override
    public List<EventField> loadCoil(LoadCoil event) {
        return List.of(
                number(event, "inductanceHenries"),
                number(event, "resistanceOhms"),
                number(event, "windingCapacitanceFarads"));
    }

    @Override
    public List<EventField> buildOut(BuildOut event) {
        return List.of(number(event, "capacitanceFarads"), number(event, "resistanceOhms"));
    }

    @Override
    public List<EventField> brokenConductor(BrokenConductor event) {
        return List.of(optional(event, "seriesResistanceOhms"));
    }

    @Override
    public List<EventField> touchingConductors(TouchingConductors event) {
        return List.of(optional(event, "shuntResistanceOhms"));
    }

    @Override
    public List<EventField> oneSideOpen(OneSideOpen event) {
        return List.of(optional(event, "bridgingCapacitanceFarads"));
    }

    @Override
    public List<EventField> oneSideEarthed(OneSideEarthed event) {
        return List.of(number(event, "earthResistanceOhms"));
    }

    @Override
    public List<EventField> cross(Cross event) {
        return List.of(number(event, "contactResistanceOhms"));
    }

    @Override
    public List<EventField> seriesPart(SeriesPart event) {
        return parts(event.part(), part -> Copies.with(event, "part", part));
    }

    @Override
    public List<EventField> shuntPart(ShuntPart event) {
        return parts(event.part(), part -> Copies.with(event, "part", part));
    }

    private static List<EventField> parts(Lumped part, Function<Lumped, Event> change) {
        return List.of(
                part(part, "resistanceOhms", change),
                part(part, "inductanceHenries", change),
                part(part, "capacitanceFarads", change),
                new ChoiceField(
                        "joined",
                        BenchChoices.words(Lumped.Joined.values()),
                        BenchChoices.word(part.joined()),
                        word -> change.apply(
                                Copies.with(part, "joined", BenchChoices.of(word, Lumped.Joined.values())))));
    }

    private static NumberField part(Lumped part, String component, Function<Lumped, Event> change) {
        return new NumberField(
                component,
                Measure.of(component),
                (OptionalDouble) Copies.get(part, component),
                Range.of(Lumped.class, component),
                Travel.of(Lumped.class, component),
                true,
                value -> change.apply(Copies.with(part, component, value)));
    }
}
