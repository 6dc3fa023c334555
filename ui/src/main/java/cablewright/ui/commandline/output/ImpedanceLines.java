// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.instrument.Settings;
import cablewright.simulator.reading.PeeledProfile;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.words.Quantities;

/** The impedance along a line, layer by layer. */
public final class ImpedanceLines {

    /** Layers that differ by less than this share are written as one in a list for people. */
    private static final double ALIKE = 0.01;

    private final PeeledProfile profile;
    private final Settings settings;

    public ImpedanceLines(PeeledProfile profile, Settings settings) {
        this.profile = profile;
        this.settings = settings;
    }

    private double metres(int layer) {
        return settings.metresThereAndBack(profile.startSeconds(layer));
    }

    /** Stretches of like impedance, with the mean of each. */
    public String text(RootCommand root) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        while (from < profile.count()) {
            int to = from;
            double sum = 0;
            while (to < profile.count() && isLike(sum, to - from, profile.ohms(to))) {
                sum += profile.ohms(to++);
            }
            out.append(root.say(
                            "impedance.stretch",
                            root.quantities().stretch(metres(from), metres(to)),
                            Quantities.number(sum / (to - from), 1)))
                    .append('\n');
            from = to;
        }
        return out.toString();
    }

    private static boolean isLike(double sum, int count, double ohms) {
        return count == 0 || Math.abs(ohms * count / sum - 1) < ALIKE;
    }

    public String csv() {
        Table table = new Table("start_s", "start_m", "end_m", "impedance_ohm");
        for (int layer = 0; layer < profile.count(); layer++) {
            table.add(
                    String.valueOf(profile.startSeconds(layer)),
                    String.valueOf(metres(layer)),
                    String.valueOf(metres(layer + 1)),
                    String.valueOf(profile.ohms(layer)));
        }
        return table.csv();
    }
}
