// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import java.util.ArrayList;
import java.util.List;

/** Tables of attenuation, a row of frequencies and a row of values. */
final class Points {

    private Points() {}

    static List<AttenuationPoint> perHundredFeet(List<Double> megahertz, List<Double> decibel) {
        List<AttenuationPoint> points = new ArrayList<>();
        for (int i = 0; i < megahertz.size(); i++) {
            points.add(AttenuationPoint.perHundredFeet(megahertz.get(i), decibel.get(i)));
        }
        return points;
    }

    static List<AttenuationPoint> perHundredMetres(List<Double> megahertz, List<Double> decibel) {
        List<AttenuationPoint> points = new ArrayList<>();
        for (int i = 0; i < megahertz.size(); i++) {
            points.add(AttenuationPoint.perHundredMetres(megahertz.get(i), decibel.get(i)));
        }
        return points;
    }
}
