// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.field;

import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.bench.field.NumberField.Travel;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.check.Range;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The fields of a branch: how long its last run is, and what it ends in. */
final class BranchFields {

    private static final String OPEN = "open";
    private static final String SHORT = "short";
    private static final String TERMINATED = "terminated";
    private static final double LEAST_METRES = 1e-3;

    private BranchFields() {}

    static List<EventField> of(Cable branch, Function<Cable, Event> change) {
        int last = branch.runs().size() - 1;
        Run run = branch.runs().get(last);
        double before = branch.lengthMetres() - run.lengthMetres();
        double used =
                branch.events().stream().mapToDouble(Event::endMetres).max().orElse(0);
        double least = Math.max(LEAST_METRES, used - before);
        NumberField length = new NumberField(
                "branchMetres",
                Measure.LENGTH,
                OptionalDouble.of(run.lengthMetres()),
                Range.between(least, Cable.MOST_METRES - before),
                new Travel(Math.max(0.1, least), Math.max(1000, 2 * least), true),
                false,
                metres -> change.apply(CableEdits.withRun(branch, last, new Run(run.type(), metres.getAsDouble()))));
        ChoiceField end = new ChoiceField(
                "branchEnd",
                List.of(OPEN, SHORT, TERMINATED),
                word(branch.farEnd()),
                word -> change.apply(CableEdits.withFarEnd(branch, end(word, run))));
        return List.of(length, end);
    }

    private static String word(FarEnd end) {
        if (end instanceof FarEnd.Open) {
            return OPEN;
        }
        return end instanceof FarEnd.Short ? SHORT : TERMINATED;
    }

    private static FarEnd end(String word, Run run) {
        switch (word) {
            case OPEN:
                return new FarEnd.Open();
            case SHORT:
                return new FarEnd.Short();
            default:
                return FarEnd.Terminated.byOhms(run.type().nominalImpedanceOhms());
        }
    }
}
