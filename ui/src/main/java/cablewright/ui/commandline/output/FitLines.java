// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Run;
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.datasheet.DataSheetFit;
import cablewright.simulator.line.CableType;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** How well the types of a cable that are known by a data sheet only were fitted to it, a line for each of their points. */
public final class FitLines {

    private FitLines() {}

    public static List<String> of(Cable cable) {
        Set<CableType> types = new LinkedHashSet<>();
        cable.runs().stream().map(Run::type).forEach(types::add);
        List<String> lines = new ArrayList<>();
        for (CableType type : types) {
            if (type.section() instanceof FittedSection) {
                lines.addAll(of(type, ((FittedSection) type.section()).fit()));
            }
        }
        return lines;
    }

    private static List<String> of(CableType type, DataSheetFit fit) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT,
                "type \"%s\", fitted to its data sheet: off by %.1f %% (root mean square), loop resistance %.4g ohm/m (%s), "
                        + "loss tangent %.2g",
                type.id(),
                100 * fit.relativeRms(),
                fit.loopResistanceOhmsPerMetre(),
                fit.resistanceOrigin().name().toLowerCase(Locale.ROOT),
                fit.lossTangent()));
        for (DataSheetFit.Point point : fit.points()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "  %10.4g Hz: sheet %.3f, fit %.3f dB/100 m (%+.1f %%)",
                    point.frequencyHertz(),
                    100 * point.sheetDecibelPerMetre(),
                    100 * point.fitDecibelPerMetre(),
                    100 * point.relativeResidual()));
        }
        return lines;
    }
}
