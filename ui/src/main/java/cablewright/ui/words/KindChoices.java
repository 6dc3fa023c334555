// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.line.CableFamily;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The kinds that can be claimed on a line: what its family of cable can have at all, so that the list gives nothing away. */
public final class KindChoices {

    private static final Set<EventKind> ON_PAIRS_ONLY = EnumSet.of(
            EventKind.LOAD_COIL,
            EventKind.BUILD_OUT,
            EventKind.SPREAD_PAIR,
            EventKind.ONE_SIDE_OPEN,
            EventKind.ONE_SIDE_EARTHED,
            EventKind.CROSS,
            EventKind.SPLIT);
    private static final Set<EventKind> ON_COAX_ONLY =
            EnumSet.of(EventKind.TAP, EventKind.SPLITTER, EventKind.HOUSING, EventKind.OFF_CENTRE);

    private static final Set<CableFamily> COAX =
            EnumSet.of(CableFamily.COAX_PLANT, CableFamily.COAX_DROP, CableFamily.COAX_SOLID);
    private static final Set<CableFamily> PAIRS =
            EnumSet.of(CableFamily.TELEPHONE_PAIR, CableFamily.DATA_PAIR, CableFamily.BUILDING_WIRE);

    private KindChoices() {}

    /**
     * Lists every kind, where the family of the cable is not known.
     *
     * @return hardware first, then damage, each in the order of the vocabulary
     */
    public static List<EventKind> all() {
        List<EventKind> kinds = new ArrayList<>(List.of(EventKind.values()));
        kinds.remove(EventKind.ELEMENT);
        kinds.sort((a, b) -> a.nature().compareTo(b.nature()));
        return List.copyOf(kinds);
    }

    /** Hardware first, then damage, each in the order of the vocabulary. */
    public static List<EventKind> of(Exercise exercise) {
        CableFamily family = exercise.cable().runs().get(0).type().family();
        List<EventKind> kinds = new ArrayList<>(all());
        if (COAX.contains(family)) {
            kinds.removeAll(ON_PAIRS_ONLY);
        } else if (PAIRS.contains(family)) {
            kinds.removeAll(ON_COAX_ONLY);
        }
        return List.copyOf(kinds);
    }
}
