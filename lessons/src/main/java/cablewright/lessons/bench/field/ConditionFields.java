// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import static cablewright.lessons.bench.field.EventFields.number;
import static cablewright.lessons.bench.field.EventFields.optional;

import cablewright.lessons.bench.edit.BenchChoices;
import cablewright.lessons.bench.edit.Copies;
import cablewright.lessons.bench.field.NumberField.Travel;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.condition.ConditionVisitor;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.Heat;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.check.Range;
import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.material.Water;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** The fields of conditions done to the line: length first, then how bad, then how it varies along the stretch. */
final class ConditionFields implements ConditionVisitor<List<EventField>> {

    private static final String REGULAR = "regular";
    private static final String RANDOM = "random";
    private static final String CONDUCTIVITY = "conductivitySiemensPerMetre";

    private final Cable cable;

    private ConditionFields(Cable cable) {
        this.cable = cable;
    }

    static List<EventField> of(Cable cable, LineCondition event) {
        return event.accept(new ConditionFields(cable));
    }

    @Override
    public List<EventField> pinch(Pinch event) {
        return List.of(length(event), number(event, "depthFraction"), profile(event));
    }

    @Override
    public List<EventField> kink(Kink event) {
        return List.of(
                length(event), number(event, "bendRadiusMetres"), optional(event, "leastRadiusMetres"), profile(event));
    }

    @Override
    public List<EventField> waterIngress(WaterIngress event) {
        return withLength(event, water(cable, event));
    }

    @Override
    public List<EventField> offCentreCore(OffCentreCore event) {
        return List.of(length(event), number(event, "eccentricity"), optional(event, "pitchMetres"), profile(event));
    }

    @Override
    public List<EventField> gradualDamage(GradualDamage event) {
        return List.of(length(event), number(event, "relativeImpedance"), profile(event));
    }

    @Override
    public List<EventField> spreadPair(SpreadPair event) {
        return List.of(length(event), number(event, "spacingFactor"), profile(event));
    }

    @Override
    public List<EventField> split(Split event) {
        List<EventField> fields = SplitFields.of(cable, event);
        return event.putRight() ? withLength(event, fields) : fields;
    }

    @Override
    public List<EventField> impedanceVariation(ImpedanceVariation event) {
        return withLength(event, unevenness(event));
    }

    @Override
    public List<EventField> heat(Heat event) {
        return List.of(length(event), number(event, "celsius"), number(event, "restCelsius"), profile(event));
    }

    private List<EventField> withLength(LineCondition event, List<EventField> others) {
        List<EventField> fields = new ArrayList<>();
        fields.add(length(event));
        fields.addAll(others);
        return fields;
    }

    private NumberField length(LineCondition event) {
        double room = cable.lengthMetres() - event.startMetres();
        double most = Math.max(room, event.lengthMetres());
        return new NumberField(
                "lengthMetres",
                Measure.LENGTH,
                OptionalDouble.of(event.lengthMetres()),
                Range.above(0, most),
                new Travel(Math.min(0.02, most / 10), most, true),
                false,
                metres -> lengthened(event, metres.getAsDouble()));
    }

    /** A shorter soaked length keeps its entry point and its drying edges within. */
    private static LineCondition lengthened(LineCondition event, double metres) {
        if (event instanceof WaterIngress wet && metres > 0) {
            return new WaterIngress(
                    wet.id(),
                    wet.startMetres(),
                    metres,
                    Math.min(wet.entryMetres(), wet.startMetres() + metres),
                    wet.picture(),
                    wet.volumeFraction(),
                    wet.water(),
                    Math.min(wet.dryingEdgeMetres(), metres / 2));
        }
        return Copies.with(event, "lengthMetres", metres);
    }

    private static List<EventField> water(Cable cable, WaterIngress wet) {
        Water water = wet.water();
        double end = wet.startMetres() + wet.lengthMetres();
        return List.of(
                number(wet, "volumeFraction"),
                new ChoiceField(
                        "picture",
                        pictures(cable, wet),
                        BenchChoices.word(wet.picture()),
                        word -> Copies.with(wet, "picture", BenchChoices.of(word, WaterDistribution.values()))),
                within(wet, "entryMetres", wet.startMetres(), end),
                within(wet, "dryingEdgeMetres", 0, wet.lengthMetres() / 2),
                new NumberField(
                        "waterCelsius",
                        Measure.TEMPERATURE,
                        OptionalDouble.of(water.temperatureCelsius()),
                        Range.between(
                                Math.max(0, water.model().lowestCelsius()),
                                water.model().highestCelsius()),
                        Travel.even(
                                Math.max(0, water.model().lowestCelsius()),
                                Math.min(40, water.model().highestCelsius())),
                        false,
                        celsius -> Copies.with(
                                wet, "water", Copies.with(water, "temperatureCelsius", celsius.getAsDouble()))),
                new NumberField(
                        "conductivity",
                        Measure.CONDUCTIVITY,
                        OptionalDouble.of(water.conductivitySiemensPerMetre()),
                        Range.of(Water.class, CONDUCTIVITY),
                        Travel.of(Water.class, CONDUCTIVITY),
                        false,
                        siemens -> Copies.with(wet, "water", Copies.with(water, CONDUCTIVITY, siemens.getAsDouble()))));
    }

    private static NumberField within(WaterIngress wet, String component, double least, double most) {
        return new NumberField(
                component,
                Measure.of(component),
                OptionalDouble.of((double) Copies.get(wet, component)),
                Range.between(least, most),
                Travel.even(least, most),
                false,
                value -> Copies.with(wet, component, value.getAsDouble()));
    }

    /** A film needs a coax around it. */
    private static List<String> pictures(Cable cable, WaterIngress wet) {
        boolean pair = cable.runAt(wet.startMetres()).type().section().drawing() instanceof SectionDrawing.Pair;
        return Arrays.stream(WaterDistribution.values())
                .filter(picture -> !pair || !picture.isFilm())
                .map(BenchChoices::word)
                .toList();
    }

    private static List<EventField> unevenness(ImpedanceVariation event) {
        return List.of(
                number(event, "relativeAmplitude"),
                new NumberField(
                        "pitchMetres",
                        Measure.LENGTH,
                        OptionalDouble.of(event.pitchMetres()),
                        Range.between(event.lengthMetres() / ImpedanceVariation.MOST_PERIODS, Cable.MOST_METRES),
                        Travel.byFactors(
                                Math.max(0.02, event.lengthMetres() / ImpedanceVariation.MOST_PERIODS),
                                Math.max(1, event.lengthMetres())),
                        false,
                        pitch -> Copies.with(event, "pitchMetres", pitch.getAsDouble())),
                new ChoiceField(
                        "pattern",
                        List.of(REGULAR, RANDOM),
                        event.seed().isPresent() ? RANDOM : REGULAR,
                        word -> Copies.with(
                                event,
                                "seed",
                                word.equals(RANDOM) ? OptionalLong.of(event.id().hashCode()) : OptionalLong.empty())));
    }

    private static ChoiceField profile(LineCondition event) {
        return new ChoiceField(
                "profile",
                BenchChoices.words(Profile.values()),
                BenchChoices.word((Profile) Copies.get(event, "profile")),
                word -> Copies.with(event, "profile", BenchChoices.of(word, Profile.values())));
    }
}
