// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A sweep of a matched line of 40 m that ends in an open: Γ = e^(−j 2ω l/v), as in any textbook on lines. */
final class MeasuredExample {

    private static final double LIGHT = 299_792_458.0;
    private static final double METRES = 40;
    private static final double VELOCITY = 0.66;

    private MeasuredExample() {}

    static Path sweep(Path folder) throws IOException {
        StringBuilder text = new StringBuilder("# MHz S RI R 50\n");
        double delay = 2 * METRES / (VELOCITY * LIGHT);
        for (int k = 1; k <= 1500; k++) {
            double phase = -2 * Math.PI * k * 0.2e6 * delay;
            text.append(String.format(Locale.ROOT, "%.1f %.9f %.9f%n", 0.2 * k, Math.cos(phase), Math.sin(phase)));
        }
        return Files.writeString(folder.resolve("line.s1p"), text);
    }
}
