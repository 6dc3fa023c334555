// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

/** What can be typed. */
final class HelpText {

    private HelpText() {}

    static String all() {
        return String.join(
                "\n",
                "Look:      trace, at 84.2, zoom 80-90, zoom out, scale 5%, scale auto, feet, metres",
                "Set:       settings, width 2ns, step 1ns, velocity 0.85, range 150, gain 20, average 64, end far",
                "Flag:      flag 84.2 pinch damage        a place, a kind, belongs or damage",
                "           flag 101-106 water damage     a stretch",
                "           kinds, list, remove A",
                "Think:     brief, hint; answer 1 (or answer 1 a) where a question comes first",
                "Hand in:   commit; then save attempt.json, next",
                "Go about:  exercises, exercise 3, quit",
                "Distances without a unit are in the unit that is shown; the first letter of most words is enough.",
                "");
    }
}
