// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.compile;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Load;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.crosssection.CrossSection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/** A sound pair beside the tested one, through the same runs at the same temperature, as met from a place along them. */
final class NeighbourLine {

    private final Cable cable;

    NeighbourLine(Cable cable) {
        this.cable = cable;
    }

    /** From a place back to the near end. */
    Network backFrom(double metres, NeighbourEnd end) {
        List<Element> elements = new ArrayList<>(pieces(0, metres));
        Collections.reverse(elements);
        return new Network(elements, load(end, cable.runs().get(0)));
    }

    /** From a place to the far end. */
    Network onwardFrom(double metres, NeighbourEnd end) {
        List<Run> runs = cable.runs();
        return new Network(pieces(metres, cable.lengthMetres()), load(end, runs.get(runs.size() - 1)));
    }

    private List<Element> pieces(double from, double to) {
        List<Element> elements = new ArrayList<>();
        double start = 0;
        for (Run run : cable.runs()) {
            double end = start + run.lengthMetres();
            double length = Math.min(end, to) - Math.max(start, from);
            if (length > 0) {
                elements.add(new Element.Line(section(run), length, Set.of()));
            }
            start = end;
        }
        return elements;
    }

    private Load load(NeighbourEnd end, Run last) {
        return switch (end) {
            case MATCHED -> new Load.Endless(section(last));
            case OPEN -> new Load.Open();
            case SHORT -> new Load.Short();
        };
    }

    private CrossSection section(Run run) {
        CrossSection section = run.type().section();
        return cable.celsius() == Cable.BASE_CELSIUS ? section : section.atTemperature(cable.celsius());
    }
}
