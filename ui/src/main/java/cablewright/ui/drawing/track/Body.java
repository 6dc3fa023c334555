// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

/**
 * Where the cable lies on its track, seen from the side.
 *
 * @param top upper edge of the shield [units of the pen]
 * @param bottom lower edge of the shield [units of the pen]
 */
record Body(double top, double bottom) {

    double middle() {
        return (top + bottom) / 2;
    }

    double height() {
        return bottom - top;
    }
}
