// SPDX-License-Identifier: Apache-2.0
package cablewright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.Map.entry;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;

/** Which package of the simulator may know which: the table of the architecture, package by package. */
@AnalyzeClasses(packages = "cablewright.simulator", importOptions = DoNotIncludeTests.class)
class SimulatorPackagesTest {
    private static final String ROOT = "cablewright.simulator";

    /**
     * What each package knows beside itself and {@code notice}. {@code wave}, {@code instrument} and {@code reading} do not know
     * the cable, since a response may come from a measurement or a sealed paper; only {@code explanation} may look at what is
     * really there.
     */
    private static final Map<String, List<String>> KNOWS = Map.ofEntries(
            entry("check", List.of()),
            entry("file", List.of()),
            entry("kernel", List.of()),
            entry("notice", List.of()),
            entry("material", List.of("check", "kernel")),
            entry("crosssection", List.of("check", "material", "kernel")),
            entry("line", List.of("check", "kernel", "material", "crosssection")),
            entry("cable", List.of("check", "material", "crosssection", "line")),
            entry("circuit", List.of("check", "kernel", "material", "crosssection", "line", "cable")),
            entry("compile", List.of("check", "material", "crosssection", "line", "cable", "circuit")),
            entry("solve", List.of("check", "kernel", "material", "crosssection", "line", "cable", "circuit")),
            entry("port", List.of("kernel", "line", "cable", "circuit", "compile", "solve")),
            entry(
                    "multiconductor",
                    List.of(
                            "check",
                            "kernel",
                            "material",
                            "crosssection",
                            "line",
                            "cable",
                            "circuit",
                            "compile",
                            "solve")),
            entry(
                    "paths",
                    List.of("kernel", "material", "crosssection", "line", "cable", "circuit", "compile", "solve")),
            entry("ladder", List.of("crosssection", "cable", "circuit")),
            entry("wave", List.of("check", "kernel", "line", "circuit")),
            entry("field", List.of("kernel", "line", "cable", "circuit", "compile", "solve", "wave")),
            entry("instrument", List.of("check", "kernel", "material", "line", "circuit", "wave")),
            entry("measurement", List.of("cable", "port", "solve", "instrument")),
            entry("reading", List.of("check", "material", "kernel", "line", "circuit", "wave", "instrument")),
            entry(
                    "explanation",
                    List.of(
                            "check",
                            "kernel",
                            "material",
                            "crosssection",
                            "line",
                            "cable",
                            "circuit",
                            "compile",
                            "solve",
                            "port",
                            "paths",
                            "wave",
                            "instrument",
                            "measurement",
                            "reading")),
            entry(
                    "exchange",
                    List.of(
                            "check",
                            "file",
                            "kernel",
                            "material",
                            "crosssection",
                            "line",
                            "cable",
                            "circuit",
                            "compile",
                            "wave")));

    @ArchTest
    static void packagesKnowOnlyWhatTheTableAllows(JavaClasses simulator) {
        KNOWS.forEach((name, known) -> noClasses()
                .that()
                .resideInAPackage(ROOT + "." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(strangersTo(name, known))
                .allowEmptyShould(true)
                .because("'" + name + "' knows only " + known)
                .check(simulator));
    }

    @ArchTest
    static final ArchRule everyPackageIsInTheTable = classes()
            .that()
            .doNotHaveSimpleName("package-info")
            .should()
            .resideInAnyPackage(KNOWS.keySet().stream()
                    .map(SimulatorPackagesTest::packageNamed)
                    .toArray(String[]::new))
            .allowEmptyShould(true);

    /** The two families of events are sealed each; together they are all events there are. */
    @ArchTest
    static final ArchRule everyEventBelongsToOneOfTheFamilies = classes()
            .that()
            .implement("cablewright.simulator.cable.Event")
            .and()
            .areNotInterfaces()
            .should()
            .implement("cablewright.simulator.cable.hardware.InlineComponent")
            .orShould()
            .implement("cablewright.simulator.cable.condition.LineCondition");

    private static String[] strangersTo(String name, List<String> known) {
        return KNOWS.keySet().stream()
                .filter(other -> !other.equals(name) && !other.equals("notice") && !known.contains(other))
                .map(SimulatorPackagesTest::packageNamed)
                .toArray(String[]::new);
    }

    private static String packageNamed(String name) {
        return ROOT + "." + name + "..";
    }
}
