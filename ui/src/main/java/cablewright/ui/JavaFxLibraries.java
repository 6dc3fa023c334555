// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import java.io.IOException;
import java.lang.instrument.Instrumentation;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * Puts the JavaFX of the machine it runs on onto the class path, so that one folder with the program works on every
 * desktop.
 *
 * <p>JavaFX comes in one set of jars for each platform, with native code in files of the same names; all sets on one
 * class path would hand the code of one processor to another. So the sets lie in {@code lib/javafx} beside the program's
 * jar, off its class path, and Java calls {@link #agentmain} before {@code main} because the manifest names this class
 * as {@code Launcher-Agent-Class} (see the package description of {@code java.lang.instrument}). When the program is
 * started with a class path that holds JavaFX already, as in tests, nothing of this runs.
 */
public final class JavaFxLibraries {
    private JavaFxLibraries() {}

    /**
     * Adds the JavaFX jars of this machine to the class path. On a machine for which there are none it adds nothing:
     * the commands that need no display work without.
     *
     * @param arguments ignored
     * @param instrumentation through which the class path grows
     * @throws IOException if a jar can't be read
     * @throws URISyntaxException if the place of the program's jar is not a file
     */
    public static void agentmain(String arguments, Instrumentation instrumentation)
            throws IOException, URISyntaxException {
        Optional<String> platform = platform(System.getProperty("os.name"), System.getProperty("os.arch"));
        if (platform.isEmpty()) {
            return;
        }
        URI program = JavaFxLibraries.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI();
        for (Path jar :
                jarsFor(platform.get(), Path.of(program).resolveSibling("lib").resolve("javafx"))) {
            instrumentation.appendToSystemClassLoaderSearch(new JarFile(jar.toFile()));
        }
    }

    /**
     * The name JavaFX gives a platform in the names of its jars.
     *
     * @param system the operating system, as in the property {@code os.name}
     * @param processor the processor, as in the property {@code os.arch}
     * @return such as {@code linux} or {@code mac-aarch64}; empty if JavaFX has no jars for that machine
     */
    static Optional<String> platform(String system, String processor) {
        boolean arm = processor.equals("aarch64");
        boolean intel = processor.equals("amd64") || processor.equals("x86_64");
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return intel ? Optional.of("win") : Optional.empty();
        }
        if (!arm && !intel) {
            return Optional.empty();
        }
        String suffix = arm ? "-aarch64" : "";
        if (name.startsWith("linux")) {
            return Optional.of("linux" + suffix);
        }
        return name.startsWith("mac") ? Optional.of("mac" + suffix) : Optional.empty();
    }

    /**
     * The jars of a platform in a folder, in order of their names.
     *
     * @param platform as from {@link #platform}
     * @param folder where the jars of all platforms lie; need not be there
     * @return paths, none if the folder is missing
     * @throws IOException if the folder can't be read
     */
    static List<Path> jarsFor(String platform, Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file ->
                            file.getFileName().toString().matches("javafx-[a-z]+-[0-9.]+-" + platform + "\\.jar"))
                    .sorted()
                    .toList();
        }
    }
}
