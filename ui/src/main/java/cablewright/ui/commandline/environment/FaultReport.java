// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes down what went wrong inside the program, for the people who mend it. It holds nothing about who works here: of what
 * was typed only the command and the names of options, and no name of the account or its home folder.
 */
public final class FaultReport {

    private FaultReport() {}

    /**
     * Writes a report into the first folder that takes one.
     *
     * @param arguments what was typed
     * @param fault what went wrong
     * @param folders where to try; one that is missing is made
     * @return the report's file; empty if none could be written
     */
    public static Optional<Path> write(List<String> arguments, Throwable fault, List<Path> folders) {
        for (Path folder : folders) {
            try {
                Files.createDirectories(folder);
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
        return withoutNames(
                "A fault of Cablewright. Please send this file to its makers, and, if you may, the files that the "
                        + "command read.\n\n"
                        + "version: " + Version.number() + "\n"
                        + "Java: " + System.getProperty("java.version") + " of " + System.getProperty("os.name") + " "
                        + System.getProperty("os.arch") + "\n"
                        + "most memory: " + Runtime.getRuntime().maxMemory() / (1 << 20) + " MiB\n"
                        + "command: " + withoutValues(arguments) + "\n\n"
                        + trace);
    }

    /** The command and its options; names of files and people are left out. */
    private static String withoutValues(List<String> arguments) {
        return arguments.stream()
                .map(argument -> {
                    if (argument.startsWith("-")) {
                        return argument.replaceFirst("=.*", "=…");
                    }
                    boolean isCommand = argument.equals(arguments.get(0)) && argument.matches("[a-z]+");
                    return isCommand || argument.matches("-?[0-9.]+[A-Za-z%]*") ? argument : "…";
                })
                .collect(Collectors.joining(" "));
    }

    private static String withoutNames(String text) {
        String shown = without(text, System.getProperty("user.home", ""), "(home)");
        return without(shown, System.getProperty("user.name", ""), "(user)");
    }

    /** A name of one or two letters, or one that the system's own words hold, would spoil the text and say nothing. */
    private static String without(String text, String name, String instead) {
        return name.length() > 2 && !name.equals("root") ? text.replace(name, instead) : text;
    }
}
