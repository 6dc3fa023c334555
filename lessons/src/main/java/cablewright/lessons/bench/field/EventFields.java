// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import cablewright.lessons.bench.edit.BenchChoices;
import cablewright.lessons.bench.edit.Copies;
import cablewright.lessons.bench.field.NumberField.Bounds;
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
import cablewright.simulator.cable.hardware.Housing;
import cablewright.simulator.cable.hardware.InlineComponent;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The fields of things put in the line. Bounds are those of the events' own constructors; over what sliders run is common
 * practice, no source.
 */
public final class EventFields implements ComponentVisitor<List<EventField>> {

    private static final double LEAST_STRETCH_METRES = 1e-3;

    private EventFields() {}

    /**
     * Tells the fields of an event.
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
                new Bounds(0, room, true),
                new Travel(0, Math.max(room, 1e-3), false),
                false,
                metres -> event.movedTo(metres.getAsDouble()));
    }

    static NumberField number(Event event, String component, Measure measure, Bounds allowed, Travel slider) {
        return new NumberField(
                component,
                measure,
                OptionalDouble.of((double) Copies.get(event, component)),
                allowed,
                slider,
                false,
                value -> Copies.with(event, component, value.getAsDouble()));
    }

    static NumberField optional(Event event, String component, Measure measure, Bounds allowed, Travel slider) {
        return new NumberField(
                component,
                measure,
                (OptionalDouble) Copies.get(event, component),
                allowed,
                slider,
                true,
                value -> Copies.with(event, component, value));
    }

    static Bounds from(double least, double most) {
        return new Bounds(least, most, true);
    }

    static Bounds above(double floor, double most) {
        return new Bounds(floor, most, false);
    }

    static Travel even(double from, double to) {
        return new Travel(from, to, false);
    }

    static Travel byFactors(double from, double to) {
        return new Travel(from, to, true);
    }

    private static NumberField nominal(Event event) {
        return number(event, "nominalImpedanceOhms", Measure.RESISTANCE, from(1, 1000), byFactors(25, 200));
    }

    private static NumberField stray(Event event) {
        return number(event, "strayCapacitanceFarads", Measure.CAPACITANCE, from(0, 1e-9), even(0, 10e-12));
    }

    @Override
    public List<EventField> splice(Splice event) {
        return List.of(
                number(event, "excessInductanceHenries", Measure.INDUCTANCE, from(0, 1e-3), even(0, 50e-9)),
                number(event, "excessCapacitanceFarads", Measure.CAPACITANCE, from(0, 1e-6), even(0, 10e-12)),
                number(event, "seriesResistanceOhms", Measure.RESISTANCE, from(0, 10), even(0, 2)));
    }

    @Override
    public List<EventField> connector(Connector event) {
        return List.of(
                number(event, "impedanceOhms", Measure.RESISTANCE, from(1, 1000), byFactors(25, 200)),
                number(event, "lengthMetres", Measure.LENGTH, above(0, 1), byFactors(0.005, 0.3)),
                number(event, "contactResistanceOhms", Measure.RESISTANCE, from(0, 1e6), even(0, 20)));
    }

    @Override
    public List<EventField> corrodedJoint(CorrodedJoint event) {
        return List.of(
                number(event, "seriesResistanceOhms", Measure.RESISTANCE, above(0, 1e9), byFactors(0.1, 10_000)),
                optional(
                        event,
                        "oxideCapacitanceFarads",
                        Measure.CAPACITANCE,
                        above(0, 1e-3),
                        byFactors(1e-12, 100e-9)));
    }

    @Override
    public List<EventField> tap(Tap event) {
        return List.of(
                number(event, "throughLossDecibels", Measure.LEVEL, above(0, 20), byFactors(0.2, 12)),
                stray(event),
                number(event, "lowCornerHertz", Measure.FREQUENCY, from(0, 1e9), even(0, 10e6)),
                nominal(event));
    }

    @Override
    public List<EventField> splitter(Splitter event) {
        List<EventField> fields = new ArrayList<>(List.of(
                number(event, "throughLossDecibels", Measure.LEVEL, above(0, 40), byFactors(0.5, 20)),
                number(event, "legLossDecibels", Measure.LEVEL, above(0, 40), byFactors(0.5, 20)),
                stray(event)));
        fields.addAll(BranchFields.of(event.leg(), leg -> Copies.with(event, "leg", leg)));
        fields.add(new ChoiceField(
                "inputSide",
                List.of("near", "far"),
                event.inputAtFarSide() ? "far" : "near",
                side -> Copies.with(event, "inputAtFarSide", side.equals("far"))));
        fields.add(nominal(event));
        return fields;
    }

    @Override
    public List<EventField> housing(Housing event) {
        return List.of(
                number(event, "throughLossDecibels", Measure.LEVEL, above(0, 60), byFactors(0.2, 30)),
                number(event, "lowCornerHertz", Measure.FREQUENCY, above(0, 1e9), byFactors(0.1e6, 200e6)),
                stray(event),
                nominal(event));
    }

    @Override
    public List<EventField> bridgedTap(BridgedTap event) {
        return BranchFields.of(event.branch(), branch -> Copies.with(event, "branch", branch));
    }

    @Override
    public List<EventField> loadCoil(LoadCoil event) {
        return List.of(
                number(event, "inductanceHenries", Measure.INDUCTANCE, above(0, 1), byFactors(1e-3, 0.2)),
                number(event, "resistanceOhms", Measure.RESISTANCE, from(0, 1000), even(0, 50)),
                number(event, "windingCapacitanceFarads", Measure.CAPACITANCE, from(0, 1e-6), even(0, 2e-9)));
    }

    @Override
    public List<EventField> buildOut(BuildOut event) {
        return List.of(
                number(event, "capacitanceFarads", Measure.CAPACITANCE, above(0, 1e-3), byFactors(1e-9, 200e-9)),
                number(event, "resistanceOhms", Measure.RESISTANCE, from(0, 1e4), even(0, 500)));
    }

    @Override
    public List<EventField> brokenConductor(BrokenConductor event) {
        return List.of(
                optional(event, "seriesResistanceOhms", Measure.RESISTANCE, above(0, 1e12), byFactors(1, 100_000)));
    }

    @Override
    public List<EventField> touchingConductors(TouchingConductors event) {
        return List.of(
                optional(event, "shuntResistanceOhms", Measure.RESISTANCE, above(0, 1e12), byFactors(1, 100_000)));
    }

    @Override
    public List<EventField> oneSideOpen(OneSideOpen event) {
        return List.of(optional(
                event, "bridgingCapacitanceFarads", Measure.CAPACITANCE, above(0, 1e-6), byFactors(1e-12, 10e-9)));
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
                part(part, "resistanceOhms", Measure.RESISTANCE, from(0, 1e12), byFactors(0.1, 100_000), change),
                part(part, "inductanceHenries", Measure.INDUCTANCE, from(0, 1e3), byFactors(1e-9, 0.1), change),
                part(part, "capacitanceFarads", Measure.CAPACITANCE, above(0, 1), byFactors(1e-13, 1e-6), change),
                new ChoiceField(
                        "joined",
                        BenchChoices.words(Lumped.Joined.values()),
                        BenchChoices.word(part.joined()),
                        word -> change.apply(
                                Copies.with(part, "joined", BenchChoices.of(word, Lumped.Joined.values())))));
    }

    private static NumberField part(
            Lumped part, String key, Measure measure, Bounds allowed, Travel slider, Function<Lumped, Event> change) {
        return new NumberField(
                key,
                measure,
                (OptionalDouble) Copies.get(part, key),
                allowed,
                slider,
                true,
                value -> change.apply(Copies.with(part, key, value)));
    }
}
