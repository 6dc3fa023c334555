// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.ui.drawing.pen.Box;

/**
 * Which row of a strip shows what of a cable, from top to bottom: words, the wave's lane, impedance, the cable's body, names,
 * and cuts across it. In a low strip first the cuts go, then the second row of names, then the impedance; the body stays.
 *
 * @param lane where the wave is drawn; of no height where it has no lane
 * @param impedanceTop upper edge of the impedance
 * @param impedanceBottom lower edge of the impedance; the same as the upper one where there is no room for it
 * @param body where the cable's body is
 * @param nameRows rows of names
 * @param cuts whether there is room for cuts
 */
record CableRows(Box lane, double impedanceTop, double impedanceBottom, Body body, int nameRows, boolean cuts) {

    private static final double WORDS = 20;
    private static final double CUTS = 54;
    private static final double LEAST_FOR_CUTS = 172;
    private static final double LEAST_FOR_TWO_NAMES = 108;
    private static final double NAMES = 10;
    private static final double ROW = 14;
    private static final double LEAST_IMPEDANCE = 9;
    private static final double MOST_LANE = 64;
    private static final double MOST_IMPEDANCE = 60;

    static CableRows in(TrackSheet sheet, boolean hasLane) {
        double s = sheet.scale();
        double high = sheet.area().height() / s;
        boolean cuts = high >= LEAST_FOR_CUTS + CUTS - 34 + (hasLane ? 36 : 0);
        double room = high - WORDS - (cuts ? CUTS : 0);
        int nameRows = room >= LEAST_FOR_TWO_NAMES ? 2 : 1;
        double bodyHigh = room < 92 ? 18 : 24;
        double gap = room < LEAST_FOR_TWO_NAMES ? 11 : 20;
        double rest = Math.max(0, room - NAMES - nameRows * ROW - bodyHigh - gap);
        double lane = hasLane ? Math.min(MOST_LANE, rest < 3 * LEAST_IMPEDANCE ? rest : rest * 0.54) : 0;
        double impedance = rest - lane < LEAST_IMPEDANCE ? 0 : Math.min(MOST_IMPEDANCE, rest - lane - 4);
        double laneTop = sheet.top() + WORDS * s;
        double impedanceTop = laneTop + (lane + 4) * s;
        double bodyTop = impedanceTop + (impedance + gap) * s;
        Box wave = new Box(sheet.left(), laneTop, sheet.view().widthPixels(), lane * s);
        return new CableRows(
                wave,
                impedanceTop,
                impedanceTop + impedance * s,
                new Body(bodyTop, bodyTop + bodyHigh * s),
                nameRows,
                cuts);
    }

    boolean hasLane() {
        return lane.height() > 0;
    }

    boolean hasImpedance() {
        return impedanceBottom > impedanceTop;
    }
}
