// SPDX-License-Identifier: Apache-2.0
package cablewright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The arrows between modules point one way: ui uses lessons and simulator, lessons uses simulator. */
@AnalyzeClasses(packages = "cablewright", importOptions = DoNotIncludeTests.class)
class ModulesTest {
    private static final String[] WINDOWS_AND_SETTINGS = {
        "javafx..", "java.awt..", "javax.swing..", "java.util.prefs..", "java.util.logging.."
    };

    @ArchTest
    static final ArchRule simulatorKnowsNeitherLessonsNorScreens = noClasses()
            .that()
            .resideInAPackage("cablewright.simulator..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("cablewright.lessons..", "cablewright.ui..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule lessonsKnowNoScreens = noClasses()
            .that()
            .resideInAPackage("cablewright.lessons..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("cablewright.ui..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTheUiOpensWindowsOrKeepsSettings = noClasses()
            .that()
            .resideOutsideOfPackage("cablewright.ui..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(WINDOWS_AND_SETTINGS)
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyLessonsAndUiReadJson = noClasses()
            .that()
            .resideInAPackage("cablewright.simulator..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml..", "com.networknt..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule noCircleBetweenPackagesAtFullDepth =
            slices().matching("cablewright.(**)").should().beFreeOfCycles();

    /** A rule that looks at nothing holds always, so first: is what we look at all there is in the sources? */
    @ArchTest
    static void theRulesSeeEveryClassOfEveryModule(JavaClasses classes) throws IOException {
        Set<String> sources = new TreeSet<>();
        for (String module : new String[] {"simulator", "lessons", "ui"}) {
            sources.addAll(classesInSourcesOf(Path.of("..", module, "src", "main", "java")));
        }

        Set<String> seen = classes.stream()
                .filter(JavaClass::isTopLevelClass)
                .map(JavaClass::getName)
                .filter(name -> !name.endsWith("package-info"))
                .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(sources, seen);
    }

    private static Set<String> classesInSourcesOf(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .map(file -> root.relativize(file).toString())
                    .map(name -> name.substring(0, name.length() - ".java".length())
                            .replace(root.getFileSystem().getSeparator(), "."))
                    .collect(Collectors.toSet());
        }
    }
}
