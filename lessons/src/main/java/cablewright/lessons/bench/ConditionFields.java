package cablewright.lessons.bench;

import static cablewright.lessons.bench.EventFields.above;
import static cablewright.lessons.bench.EventFields.byFactors;
import static cablewright.lessons.bench.EventFields.even;
import static cablewright.lessons.bench.EventFields.from;
import static cablewright.lessons.bench.EventFields.number;
import static cablewright.lessons.bench.EventFields.optional;

import cablewright.lessons.bench.NumberField.Travel;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.DoneToLine;
import cablewright.simulator.cable.GradualDamage;
import cablewright.simulator.cable.Kink;
import cablewright.simulator.cable.OffCentreCore;
import cablewright.simulator.cable.Pinch;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Split;
import cablewright.simulator.cable.SpreadPair;
import cablewright.simulator.cable.Unevenness;
import cablewright.simulator.cable.WaterIngress;
import cablewright.simulator.crosssection.SectionDrawing;
import cablewright.simulator.crosssection.WaterPicture;
import cablewright.simulator.material.Water;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** The fields of conditions done to the line: length first, then how bad, then how it varies along the stretch. */
final class ConditionFields {

    private static final String REGULAR = "regular";
    private static final String RANDOM = "random";

    private ConditionFields() {}

    static List<EventField> of(Cable cable, DoneToLine event) {
        List<EventField> fields = new ArrayList<>();
        if (!(event instanceof Split) || ((Split) event).putRight()) {
            fields.add(length(cable, event));
        }
        if (event instanceof Pinch) {
            fields.add(number(event, "depthFraction", Measure.SHARE, above(0, 0.99), even(0.01, 0.95)));
        } else if (event instanceof Kink) {
            fields.add(number(event, "bendRadiusMetres", Measure.LENGTH, from(0.001, 100), byFactors(0.005, 0.5)));
            fields.add(optional(event, "leastRadiusMetres", Measure.LENGTH, from(0.001, 100), byFactors(0.02, 1)));
        } else if (event instanceof WaterIngress) {
            fields.addAll(water(cable, (WaterIngress) event));
        } else if (event instanceof OffCentreCore) {
            fields.add(number(event, "eccentricity", Measure.SHARE, above(0, 0.98), even(0.01, 0.95)));
            fields.add(
                    optional(event, "pitchMetres", Measure.LENGTH, above(0, Cable.MOST_METRES), byFactors(0.05, 50)));
        } else if (event instanceof GradualDamage) {
            fields.add(number(event, "relativeImpedance", Measure.SHARE, from(0.05, 20), byFactors(0.4, 2.5)));
        } else if (event instanceof SpreadPair) {
            fields.add(number(event, "spacingFactor", Measure.FACTOR, above(1, 20), byFactors(1.02, 8)));
        } else if (event instanceof Split) {
            fields.addAll(SplitFields.of(cable, (Split) event));
        } else if (event instanceof Unevenness) {
            fields.addAll(unevenness((Unevenness) event));
        } else {
            fields.add(number(event, "celsius", Measure.TEMPERATURE, from(-60, 150), even(-40, 120)));
            fields.add(number(event, "restCelsius", Measure.TEMPERATURE, from(-60, 150), even(-40, 60)));
        }
        if (!(event instanceof WaterIngress) && !(event instanceof Unevenness) && !(event instanceof Split)) {
            fields.add(profile(event));
        }
        return fields;
    }

    private static NumberField length(Cable cable, DoneToLine event) {
        double room = cable.lengthMetres() - event.startMetres();
        double most = Math.max(room, event.lengthMetres());
        return new NumberField(
                "lengthMetres",
                Measure.LENGTH,
                OptionalDouble.of(event.lengthMetres()),
                above(0, most),
                new Travel(Math.min(0.02, most / 10), most, true),
                false,
                metres -> lengthened(event, metres.getAsDouble()));
    }

    /** A shorter soaked length keeps its entry point and its drying edges within. */
    private static DoneToLine lengthened(DoneToLine event, double metres) {
        if (event instanceof WaterIngress && metres > 0) {
            WaterIngress wet = (WaterIngress) event;
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
        return Copy.with(event, "lengthMetres", metres);
    }

    private static List<EventField> water(Cable cable, WaterIngress wet) {
        Water water = wet.water();
        double end = wet.startMetres() + wet.lengthMetres();
        return List.of(
                number(wet, "volumeFraction", Measure.SHARE, above(0, 0.99), even(0.005, 0.6)),
                new ChoiceField(
                        "picture",
                        pictures(cable, wet),
                        Choices.word(wet.picture()),
                        word -> Copy.with(wet, "picture", Choices.of(word, WaterPicture.values()))),
                number(wet, "entryMetres", Measure.LENGTH, from(wet.startMetres(), end), even(wet.startMetres(), end)),
                number(
                        wet,
                        "dryingEdgeMetres",
                        Measure.LENGTH,
                        from(0, wet.lengthMetres() / 2),
                        even(0, wet.lengthMetres() / 2)),
                new NumberField(
                        "waterCelsius",
                        Measure.TEMPERATURE,
                        OptionalDouble.of(water.temperatureCelsius()),
                        from(
                                Math.max(0, water.model().lowestCelsius()),
                                water.model().highestCelsius()),
                        even(
                                Math.max(0, water.model().lowestCelsius()),
                                Math.min(40, water.model().highestCelsius())),
                        false,
                        celsius ->
                                Copy.with(wet, "water", Copy.with(water, "temperatureCelsius", celsius.getAsDouble()))),
                new NumberField(
                        "conductivity",
                        Measure.CONDUCTIVITY,
                        OptionalDouble.of(water.conductivitySiemensPerMetre()),
                        from(0, 10),
                        byFactors(1e-4, 5),
                        false,
                        siemens -> Copy.with(
                                wet, "water", Copy.with(water, "conductivitySiemensPerMetre", siemens.getAsDouble()))));
    }

    /** A film needs a coax around it. */
    private static List<String> pictures(Cable cable, WaterIngress wet) {
        boolean pair = cable.runAt(wet.startMetres()).type().section().drawing() instanceof SectionDrawing.Pair;
        return Arrays.stream(WaterPicture.values())
                .filter(picture -> !pair || !picture.isFilm())
                .map(Choices::word)
                .toList();
    }

    private static List<EventField> unevenness(Unevenness event) {
        return List.of(
                number(event, "relativeAmplitude", Measure.SHARE, above(0, 0.3), byFactors(0.001, 0.2)),
                number(
                        event,
                        "pitchMetres",
                        Measure.LENGTH,
                        from(event.lengthMetres() / Unevenness.MOST_PERIODS, Cable.MOST_METRES),
                        byFactors(
                                Math.max(0.02, event.lengthMetres() / Unevenness.MOST_PERIODS),
                                Math.max(1, event.lengthMetres()))),
                new ChoiceField(
                        "pattern",
                        List.of(REGULAR, RANDOM),
                        event.seed().isPresent() ? RANDOM : REGULAR,
                        word -> Copy.with(
                                event,
                                "seed",
                                word.equals(RANDOM) ? OptionalLong.of(event.id().hashCode()) : OptionalLong.empty())));
    }

    private static ChoiceField profile(DoneToLine event) {
        return new ChoiceField(
                "profile",
                Choices.words(Profile.values()),
                Choices.word((Profile) Copy.get(event, "profile")),
                word -> Copy.with(event, "profile", Choices.of(word, Profile.values())));
    }
}
