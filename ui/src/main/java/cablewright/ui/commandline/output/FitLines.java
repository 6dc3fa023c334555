// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Run;
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.datasheet.DataSheetFit;
import cablewright.simulator.line.CableType;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** How well the types of a cable that are known by a data sheet only were fitted to it, a line for each of their points. */
public final class FitLines {

    private FitLines() {}

    public static List<String> of(Cable cable, RootCommand root) {
        Set<CableType> types = new LinkedHashSet<>();
        cable.runs().stream().map(Run::type).forEach(types::add);
        List<String> lines = new ArrayList<>();
        for (CableType type : types) {
            if (type.section() instanceof FittedSection) {
                lines.addAll(of(type, ((FittedSection) type.section()).fit(), root));
            }
        }
        return lines;
    }

    private static List<String> of(CableType type, DataSheetFit fit, RootCommand root) {
        List<String> lines = new ArrayList<>();
        lines.add(root.say(
                "fit.type",
                type.id(),
                Quantities.number(100 * fit.relativeRms(), 1),
                format("%.4g", fit.loopResistanceOhmsPerMetre()),
                root.say("fit." + Words.word(fit.resistanceOrigin())),
                format("%.2g", fit.lossTangent())));
        for (DataSheetFit.Point point : fit.points()) {
            lines.add("  "
                    + root.say(
                            "fit.point",
                            format("%10.4g", point.frequencyHertz()),
                            format("%.3f", 100 * point.sheetDecibelPerMetre()),
                            format("%.3f", 100 * point.fitDecibelPerMetre()),
                            format("%+.1f", 100 * point.relativeResidual())));
        }
        return lines;
    }

    private static String format(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
