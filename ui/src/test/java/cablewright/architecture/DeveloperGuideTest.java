// SPDX-License-Identifier: Apache-2.0
package cablewright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The guide's examples of a new component and a new condition, applied to the sources step by step and compiled. */
class DeveloperGuideTest {

    private static final Path ROOT = Path.of("..");

    /** Whatever a new event can break names one of these; all else is taken as it is compiled already. */
    private static final Pattern CONCERNED = Pattern.compile(
            "\\b(ComponentVisitor|ConditionVisitor|EventVisitor|InlineComponent|LineCondition|EventKind)\\b");

    private static final Pattern STEP = Pattern.compile(
            "^## [^`\n]*: `([^`]+)`(?: before `([^`]+)`| at the end)?\n\n```java\n(.*?)```",
            Pattern.DOTALL | Pattern.MULTILINE);

    @TempDir
    Path folder;

    private record Step(String file, String before, String code) {
        boolean isVisit() {
            return file.endsWith("Visitor.java");
        }
    }

    private static List<Step> steps(String example) throws IOException {
        String text;
        try (InputStream in = DeveloperGuideTest.class.getResourceAsStream("/cablewright/guide/" + example)) {
            text = new String(Objects.requireNonNull(in, example).readAllBytes(), StandardCharsets.UTF_8);
        }
        List<Step> steps = new ArrayList<>();
        Matcher step = STEP.matcher(text);
        while (step.find()) {
            steps.add(new Step(step.group(1), step.group(2), step.group(3)));
        }
        assertEquals(
                text.split("```java").length - 1, steps.size(), "every block of code has a heading that says where");
        return steps;
    }

    private static int afterTheVisit(List<Step> steps) {
        int visit = 0;
        while (!steps.get(visit).isVisit()) {
            visit++;
        }
        return visit + 1;
    }

    @ParameterizedTest
    @ValueSource(strings = {"new-component.md", "new-condition.md"})
    void exampleCompilesWhenEveryStepIsTaken(String example) throws IOException {
        assertEquals(Set.of(), brokenBy(steps(example)));
    }

    /** The named places are those that break, and no others: nothing forgets a new event in silence, nothing is superfluous. */
    @ParameterizedTest
    @ValueSource(strings = {"new-component.md", "new-condition.md"})
    void buildBreaksInEachNamedPlaceUntilItTreatsTheNewEvent(String example) throws IOException {
        List<Step> steps = steps(example);
        int named = afterTheVisit(steps);
        assertTrue(steps.size() - named >= 3, "fields, symbol and sentence are among the steps");
        Set<String> places = steps.subList(named, steps.size()).stream()
                .map(step -> nameOf(Path.of(step.file())))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(places, brokenBy(steps.subList(0, named)));
    }

    /** A record of the sealed family can't be added without a visit of its own. */
    @ParameterizedTest
    @ValueSource(strings = {"new-component.md", "new-condition.md"})
    void recordWithoutAVisitOfItsOwnDoesNotCompile(String example) throws IOException {
        List<Step> steps = steps(example);
        List<Step> taken = steps.subList(0, afterTheVisit(steps) - 1);
        assertEquals(Set.of(nameOf(Path.of(steps.get(0).file()))), brokenBy(taken));
    }

    /** Names of the files with errors once the steps are applied to a copy of all that a new event concerns. */
    private Set<String> brokenBy(List<Step> steps) throws IOException {
        Path copy = Files.createTempDirectory(folder, "sources");
        for (String module : List.of("simulator", "lessons", "ui")) {
            copyConcerned(module, copy);
        }
        for (Step step : steps) {
            apply(step, copy.resolve(step.file()));
        }
        return broken(copy);
    }

    private static void copyConcerned(String module, Path to) throws IOException {
        Path sources = ROOT.resolve(module).resolve(Path.of("src", "main", "java"));
        try (Stream<Path> files = Files.walk(sources)) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".java")).toList()) {
                if (CONCERNED.matcher(Files.readString(file)).find()) {
                    Path target = to.resolve(ROOT.relativize(file).toString());
                    Files.createDirectories(target.getParent());
                    Files.copy(file, target);
                }
            }
        }
    }

    private static void apply(Step step, Path file) throws IOException {
        if (!Files.exists(file)) {
            assertFalse(Files.exists(ROOT.resolve(step.file())), step.file() + " is not among what an event concerns");
            Files.writeString(file, step.code());
            return;
        }
        String text = Files.readString(file).stripTrailing();
        int at = step.before() == null ? text.length() - 1 : text.indexOf(step.before());
        assertTrue(at >= 0, step.file() + " has no \"" + step.before() + "\"");
        String code = step.before() == null ? "\n" + step.code() : step.code().replaceFirst("\n$", lineEnd(step));
        Files.writeString(file, text.substring(0, at) + code + text.substring(at) + "\n");
    }

    /** A step before something in the middle of a line adds no line. */
    private static String lineEnd(Step step) {
        return step.before().startsWith("    ") ? "\n" : "";
    }

    private Set<String> broken(Path sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        List<Path> files;
        try (Stream<Path> walk = Files.walk(sources)) {
            files = walk.filter(file -> file.toString().endsWith(".java")).toList();
        }
        assertTrue(files.size() > 40, "an event concerns more than " + files.size() + " files");
        Path classes = Files.createTempDirectory(folder, "classes");
        List<String> options = List.of(
                "--release",
                "17",
                "-proc:none",
                "-nowarn",
                "-d",
                classes.toString(),
                "-cp",
                System.getProperty("java.class.path"));
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(found, null, null)) {
            boolean compiled = compiler.getTask(
                            null, manager, found, options, null, manager.getJavaFileObjectsFromPaths(files))
                    .call();
            Set<String> broken = found.getDiagnostics().stream()
                    .filter(one -> one.getKind() == Diagnostic.Kind.ERROR)
                    .map(one -> nameOf(Path.of(one.getSource().toUri())))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(compiled, broken.isEmpty());
            return broken;
        }
    }

    private static String nameOf(Path file) {
        return file.getFileName().toString();
    }
}
