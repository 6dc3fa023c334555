// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Names of platforms as in the profiles of the pom {@code org.openjfx:javafx:21.0.11}, which map the operating system
 * and the processor to the ending of the jars.
 */
class JavaFxLibrariesTest {
    @ParameterizedTest
    @CsvSource({
        "Linux, amd64, linux",
        "Linux, aarch64, linux-aarch64",
        "Mac OS X, x86_64, mac",
        "Mac OS X, aarch64, mac-aarch64",
        "Windows 11, amd64, win",
        "Windows Server 2022, amd64, win",
    })
    void platformsAreNamedAsJavaFxNamesThem(String system, String processor, String platform) {
        assertEquals(Optional.of(platform), JavaFxLibraries.platform(system, processor));
    }

    @ParameterizedTest
    @CsvSource({"Linux, riscv64", "FreeBSD, amd64", "Windows 11, aarch64", "Mac OS X, ppc64"})
    void machinesWithoutJavaFxHaveNoPlatform(String system, String processor) {
        assertEquals(Optional.empty(), JavaFxLibraries.platform(system, processor));
    }

    @Test
    void onlyTheJarsOfThePlatformItselfAreTaken(@TempDir Path folder) throws IOException {
        Path base = Files.createFile(folder.resolve("javafx-base-21.0.11-linux.jar"));
        Path graphics = Files.createFile(folder.resolve("javafx-graphics-21.0.11-linux.jar"));
        Path graphicsOnArm = Files.createFile(folder.resolve("javafx-graphics-21.0.11-linux-aarch64.jar"));
        Files.createFile(folder.resolve("javafx-graphics-21.0.11-win.jar"));
        Files.createFile(folder.resolve("linux.jar"));

        assertEquals(List.of(base, graphics), JavaFxLibraries.jarsFor("linux", folder));
        assertEquals(List.of(graphicsOnArm), JavaFxLibraries.jarsFor("linux-aarch64", folder));
    }

    @Test
    void aMissingFolderHoldsNoJars(@TempDir Path folder) throws IOException {
        assertEquals(List.of(), JavaFxLibraries.jarsFor("linux", folder.resolve("javafx")));
    }
}
