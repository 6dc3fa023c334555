// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide's example of a new event, applied to the sources as the guide says and compiled. */
class DeveloperGuideTest {

    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Path CABLE = Path.of("cablewright", "simulator", "cable");
    private static final Path HARDWARE = CABLE.resolve("hardware");
    private static final Path COMPILE = Path.of("cablewright", "simulator", "compile");

    @TempDir
    Path folder;

    private static List<String> codeOf(String section) throws IOException {
        String guide = Files.readString(Path.of("..", "DEVELOPERS.md"));
        String text = guide.substring(guide.indexOf("### " + section), guide.indexOf("### A cable type"));
        List<String> blocks = new ArrayList<>();
        Matcher block = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL).matcher(text);
        while (block.find()) {
            blocks.add(block.group(1));
        }
        return blocks;
    }

    @Test
    void exampleOfANewEventCompilesWhenItIsFollowed() throws IOException {
        Path copied = folder.resolve("java");
        copySources(copied);
        List<String> blocks = codeOf("An event");
        assertEquals(5, blocks.size());
        Files.writeString(copied.resolve(HARDWARE).resolve("FixedAttenuator.java"), blocks.get(0));
        insertBefore(
                copied.resolve(HARDWARE).resolve("InlineComponent.java"), "                ShuntPart", blocks.get(1));
        insertBefore(
                copied.resolve(CABLE).resolve("EventKind.java"),
                "    /** A lumped element of no trade name",
                blocks.get(2));
        insertAtEnd(copied.resolve(HARDWARE).resolve("ComponentVisitor.java"), blocks.get(3));
        Path hardware = copied.resolve(COMPILE).resolve("HardwareElements.java");
        insertAtEnd(hardware, blocks.get(4));
        insertBefore(
                hardware,
                "import cablewright.simulator.cable.hardware.Housing;",
                "import cablewright.simulator.cable.hardware.FixedAttenuator;\n");
        assertEquals("", errorsOf(copied));
    }

    @Test
    void sourcesBreakUntilEveryVisitorTreatsTheNewEvent() throws IOException {
        Path copied = folder.resolve("java");
        copySources(copied);
        insertAtEnd(copied.resolve(HARDWARE).resolve("ComponentVisitor.java"), "    T somethingNew(Splice event);\n");
        assertTrue(errorsOf(copied).contains("somethingNew"));
    }

    private static void copySources(Path to) throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(SOURCES.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    private static void insertBefore(Path file, String anchor, String text) throws IOException {
        String before = Files.readString(file);
        assertTrue(before.contains(anchor), file + " has no \"" + anchor + "\"");
        int at = before.indexOf(anchor);
        Files.writeString(file, before.substring(0, at) + text + before.substring(at));
    }

    private static void insertAtEnd(Path file, String text) throws IOException {
        String before = Files.readString(file).stripTrailing();
        Files.writeString(file, before.substring(0, before.length() - 1) + "\n" + text + "}\n");
    }

    private String errorsOf(Path sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        Path classes = Files.createDirectories(folder.resolve("classes"));
        List<Path> files;
        try (Stream<Path> walk = Files.walk(sources)) {
            files = walk.filter(file -> file.toString().endsWith(".java")).toList();
        }
        StringWriter errors = new StringWriter();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            List<String> options = List.of(
                    "--release",
                    "17",
                    "-proc:none",
                    "-nowarn",
                    "-d",
                    classes.toString(),
                    "-cp",
                    System.getProperty("java.class.path"));
            boolean compiled = compiler.getTask(
                            errors, manager, null, options, null, manager.getJavaFileObjectsFromPaths(files))
                    .call();
            return compiled ? "" : errors.toString();
        }
    }
}
