// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * How large the terminal is.
 *
 * @param columns characters across
 * @param lines lines
 */
public record TerminalSize(int columns, int lines) {

    private static final TerminalSize USUAL = new TerminalSize(80, 24);
    private static final TerminalSize OF_A_FILE = new TerminalSize(100, 30);
    private static final int MOST = 400;

    /** Asks the terminal; where it does not say, the variables COLUMNS and LINES, or else 80 by 24, 100 by 30 in a file. */
    public static TerminalSize of(Environment surroundings) {
        Optional<TerminalSize> asked = surroundings.interactive() ? ask() : Optional.empty();
        TerminalSize usual = surroundings.interactive() ? USUAL : OF_A_FILE;
        String lines = surroundings.environment().getOrDefault("LINES", "").strip();
        String columns = surroundings.environment().getOrDefault("COLUMNS", "").strip();
        return asked.orElseGet(() -> parse(lines + " " + columns)
                .or(() -> parse(usual.lines() + " " + columns))
                .or(() -> parse(lines + " " + usual.columns()))
                .orElse(usual));
    }

    private static Optional<TerminalSize> ask() {
        File terminal = new File("/dev/tty");
        if (!terminal.exists()) {
            return Optional.empty();
        }
        try {
            Process stty = new ProcessBuilder("stty", "size")
                    .redirectInput(terminal)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String said = new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            stty.waitFor(1, TimeUnit.SECONDS);
            return parse(said);
        } catch (IOException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** Reads "lines columns". */
    static Optional<TerminalSize> parse(String said) {
        String[] words = said.strip().split("\\s+");
        if (words.length != 2 || !words[0].matches("\\d{1,4}") || !words[1].matches("\\d{1,4}")) {
            return Optional.empty();
        }
        int lines = Integer.parseInt(words[0]);
        int columns = Integer.parseInt(words[1]);
        boolean usable = lines > 0 && columns > 0;
        return usable
                ? Optional.of(new TerminalSize(Math.min(MOST, columns), Math.min(MOST, lines)))
                : Optional.empty();
    }
}
