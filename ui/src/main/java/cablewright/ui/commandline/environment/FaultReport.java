// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Writes down what went wrong inside the program, for the people who mend it. */
public final class FaultReport {

    private FaultReport() {}

    /**
     * Writes a report into the first folder that takes one.
     *
     * @param arguments what was typed
     * @param fault what went wrong
     * @param folders where to try
     * @return the report's file; empty if none could be written
     */
    public static Optional<Path> write(List<String> arguments, Throwable fault, List<Path> folders) {
        for (Path folder : folders) {
            try {
                Path file = Files.createTempFile(folder, "cablewright-fault-", ".txt");
                Files.writeString(file, text(arguments, fault));
                return Optional.of(file.toAbsolutePath().normalize());
            } catch (IOException | SecurityException e) {
                // The next folder may take it; if none does, the caller says so.
                continue;
            }
        }
        return Optional.empty();
    }

    private static String text(List<String> arguments, Throwable fault) {
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace, true));
        return "A fault of Cablewright. Please hand this file, and the files that the command read, to its makers.\n\n"
                + "version: " + Version.number() + "\n"
                + "Java: " + System.getProperty("java.version") + " of " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch") + "\n"
                + "most memory: " + Runtime.getRuntime().maxMemory() / (1 << 20) + " MiB\n"
                + "command: " + String.join(" ", arguments) + "\n\n"
                + trace;
    }
}
