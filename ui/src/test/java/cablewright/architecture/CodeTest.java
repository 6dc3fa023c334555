// SPDX-License-Identifier: Apache-2.0
package cablewright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import cablewright.ui.Main;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Random;
import java.util.concurrent.ThreadLocalRandom;

/** Habits that hold in all of the code. */
@AnalyzeClasses(packages = "cablewright", importOptions = DoNotIncludeTests.class)
class CodeTest {
    @ArchTest
    static final ArchRule viewModelsSeeNoControls = noClasses()
            .that()
            .haveSimpleNameEndingWith("ViewModel")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx.scene..", "javafx.stage..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTheCommandLineWritesToTheTerminal = noClasses()
            .that()
            .resideOutsideOfPackage("cablewright.ui.commandline..")
            .and()
            .doNotBelongToAnyOf(Main.class)
            .should(ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule nothingStaticChanges =
            fields().that().areStatic().should().beFinal();

    @ArchTest
    static final ArchRule noArrayIsSharedByStaticField = noFields()
            .that(areArrays())
            .and()
            .areStatic()
            .should()
            .notBePrivate()
            .allowEmptyShould(true);

    /** The same input and seed give the same bytes: chance and time come in from outside. */
    @ArchTest
    static final ArchRule simulatorAsksNeitherChanceNorTheClock = noClasses()
            .that()
            .resideInAPackage("cablewright.simulator..")
            .should()
            .callConstructor(Random.class)
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethod(StrictMath.class, "random")
            .orShould()
            .callMethod(ThreadLocalRandom.class, "current")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.time.Clock")
            .allowEmptyShould(true);

    private static DescribedPredicate<JavaField> areArrays() {
        return DescribedPredicate.describe(
                "are arrays",
                field -> field.getRawType().isArray() && !field.getModifiers().contains(JavaModifier.SYNTHETIC));
    }
}
