// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.sheet;

import cablewright.simulator.crosssection.datasheet.ConductorLayout;
import cablewright.simulator.line.CableFamily;
import java.util.List;
import java.util.stream.Stream;

/** The families of which a user's own cable can be, and how their conductors lie. */
final class Families {

    private static final List<CableFamily> COAX =
            List.of(CableFamily.COAX_DROP, CableFamily.COAX_PLANT, CableFamily.COAX_SOLID);
    private static final List<CableFamily> PAIRS =
            List.of(CableFamily.TELEPHONE_PAIR, CableFamily.DATA_PAIR, CableFamily.BUILDING_WIRE);

    private Families() {}

    static List<CableFamily> all() {
        return Stream.concat(COAX.stream(), PAIRS.stream()).toList();
    }

    static ConductorLayout layout(CableFamily family) {
        return COAX.contains(family) ? ConductorLayout.COAX : ConductorLayout.PAIR;
    }
}
