// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.benchmark;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.line.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A cable of 30 events on 133 m of drop coax. */
final class StreetOfTaps {

    private StreetOfTaps() {}

    static Cable withLastEventAt(double metres) {
        List<Event> events = new ArrayList<>();
        for (int i = 0; i < 29; i++) {
            events.add(event(i, 4 * i + 3));
        }
        events.add(event(29, metres));
        return new Cable(
                "Thirty events",
                List.of(new Run(Catalogue.standard().type("drop-6-foam"), 133)),
                events,
                FarEnd.Terminated.byOhms(75));
    }

    private static Event event(int i, double metres) {
        if (i % 3 == 0) {
            return new Splice("splice-" + i, metres, 4e-9, 0, 0.01);
        }
        if (i % 3 == 1) {
            return new Pinch("pinch-" + i, metres, 0.12, 0.3, Profile.RAISED_COSINE);
        }
        return new Tap("tap-" + i, metres, 75, 0.6, 1e-12, 1e6);
    }
}
