// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.lessons.format.LessonFormatException;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.HalfSine;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A small cable of Saltmarsh Point (invented) and studies of it. */
final class StudyCases {

    static final byte[] FILE =
            """
            {
              "format": "cablewright-cable",
              "version": 1,
              "cable": {
                "title": "quay camera 3",
                "runs": [{"type": "drop-6-foam", "lengthMetres": 133}],
                "events": [
                  {"kind": "splice", "id": "s1", "positionMetres": 31, "excessInductanceHenries": 2e-9,
                   "excessCapacitanceFarads": 0, "seriesResistanceOhms": 0.02},
                  {"kind": "pinch", "id": "p1", "startMetres": 84, "lengthMetres": 0.2, "depthFraction": 0.4,
                   "profile": "flat"}
                ],
                "farEnd": {"kind": "terminated", "load": {"joined": "series", "resistanceOhms": 75}},
                "celsius": 20
              }
            }
            """
                    .getBytes(StandardCharsets.UTF_8);

    static final String DEPTH = "/cable/events/p1/depthFraction";

    private StudyCases() {}

    static StudyPlan plan(Sampling sampling, Parameter... parameters) {
        Settings settings = new Settings(new HalfSine(20e-9), 0.85, 150, 0, 64);
        return new StudyPlan(List.of(parameters), sampling, "p1", LineEnd.NEAR, settings, 75);
    }

    static Study study(StudyPlan plan) {
        try {
            return new Study(plan, "quay-camera-3.json", FILE, "test");
        } catch (LessonFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Twelve rows: four depths and three pulse widths. */
    static Study grid() {
        return study(plan(
                Sampling.grid(),
                new Parameter(DEPTH, 0.1, 0.7, 4, false),
                new Parameter("pulse_s", 10e-9, 40e-9, 3, true)));
    }

    static Study random() {
        return study(plan(
                Sampling.random(9, 7),
                new Parameter(DEPTH, 0.01, 0.9, 1, true),
                new Parameter("/cable/runs/0/lengthMetres", 85, 200, 1, false)));
    }
}
