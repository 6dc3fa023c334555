// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import cablewright.lessons.bench.edit.BenchChoices;
import cablewright.lessons.bench.edit.Copies;
import cablewright.lessons.bench.field.NumberField.Travel;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.check.Range;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The fields of a split: how the wires lie, whether it is put right, and how the neighbour is left at its ends. */
final class SplitFields {

    private static final double USUAL_PITCH = 2;
    private static final String RESPLIT = "re-split";
    private static final String TO_THE_END = "to-the-end";

    private SplitFields() {}

    static List<EventField> of(Cable cable, Split split) {
        List<EventField> fields = new ArrayList<>();
        SplitShape shape = split.shape();
        fields.add(new ChoiceField(
                "layout",
                BenchChoices.words(SplitLayout.values()),
                BenchChoices.word(shape.layout()),
                word -> Copies.with(split, "shape", laid(shape, BenchChoices.of(word, SplitLayout.values())))));
        if (shape.pitchOverSpacing().isPresent()) {
            fields.add(new NumberField(
                    "pitchOverSpacing",
                    Measure.FACTOR,
                    shape.pitchOverSpacing(),
                    Range.of(SplitShape.class, "pitchOverSpacing"),
                    Travel.byFactors(SplitShape.LEAST_PITCH, SplitShape.MOST_PITCH),
                    false,
                    pitch -> Copies.with(split, "shape", new SplitShape(shape.layout(), pitch))));
        }
        fields.add(new ChoiceField(
                "putRight",
                List.of(RESPLIT, TO_THE_END),
                split.putRight() ? RESPLIT : TO_THE_END,
                word -> word.equals(RESPLIT) ? Copies.with(split, "putRight", true) : toTheEnd(cable, split)));
        fields.add(end(split, "neighbourNearEnd", split.neighbourNearEnd()));
        if (split.putRight()) {
            fields.add(end(split, "neighbourFarEnd", split.neighbourFarEnd()));
        }
        return fields;
    }

    private static Split toTheEnd(Cable cable, Split split) {
        double rest = cable.lengthMetres() - split.startMetres();
        return Copies.with(Copies.with(split, "lengthMetres", rest), "putRight", false);
    }

    private static SplitShape laid(SplitShape shape, SplitLayout layout) {
        OptionalDouble pitch = layout == SplitLayout.QUAD
                ? OptionalDouble.empty()
                : OptionalDouble.of(shape.pitchOverSpacing().orElse(USUAL_PITCH));
        return new SplitShape(layout, pitch);
    }

    private static ChoiceField end(Split split, String key, NeighbourEnd now) {
        return new ChoiceField(
                key,
                BenchChoices.words(NeighbourEnd.values()),
                BenchChoices.word(now),
                word -> Copies.with(split, key, BenchChoices.of(word, NeighbourEnd.values())));
    }
}
