package cablewright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
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
     * What each package knows beside itself and {@code notice}. From {@code wave} on nothing knows the cable, since a
     * response may come from a measurement or a sealed paper; only {@code explanation} and {@code demonstration} may look at what is
     * really there.
     */
    private static final Map<String, List<String>> KNOWS = Map.ofEntries(
            entry("notice", List.of()),
            entry("material", List.of()),
            entry("crosssection", List.of("material")),
            entry("line", List.of("material", "crosssection")),
            entry("cable", List.of("material", "crosssection", "line")),
            entry("network", List.of("material", "crosssection", "line", "cable")),
            entry("wave", List.of("line", "network")),
            entry("instrument", List.of("line", "network", "wave")),
            entry("reading", List.of("line", "network", "wave", "instrument")),
            entry(
                    "explanation",
                    List.of("material", "crosssection", "line", "cable", "network", "wave", "instrument", "reading")),
            entry(
                    "demonstration",
                    List.of(
                            "material",
                            "crosssection",
                            "line",
                            "cable",
                            "network",
                            "wave",
                            "instrument",
                            "reading",
                            "explanation")),
            entry("exchange", List.of("material", "crosssection", "line", "cable", "network", "wave")));

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

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().allowEmptyShould(true);

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
