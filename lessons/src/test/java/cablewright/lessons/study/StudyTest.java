// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import org.junit.jupiter.api.Test;

class StudyTest {

    @Test
    void lastParameterOfAGridChangesFastestAndBothEndsAreExact() {
        StudyPlan plan = StudyCases.grid().plan();
        assertEquals(12, plan.rows());
        assertArrayEquals(new double[] {0.1, 10e-9}, plan.values(0));
        assertArrayEquals(new double[] {0.1, 20e-9}, plan.values(1), 1e-20);
        assertArrayEquals(new double[] {0.7, 40e-9}, plan.values(11));
    }

    @Test
    void randomRowIsTheSameWhoeverAsksForIt() {
        StudyPlan plan = StudyCases.random().plan();
        double[] row = plan.values(5);
        plan.values(2);
        assertArrayEquals(row, StudyCases.random().plan().values(5));
        assertTrue(row[0] >= 0.01 && row[0] <= 0.9 && row[1] >= 85 && row[1] <= 200);
    }

    /** ρ = (Z − Z₀)/(Z + Z₀) of the pressed section (any text); the cross-section is held to its own references. */
    @Test
    void rowTellsImpedanceAndReflectionOfTheCondition() {
        CableType drop = Catalogue.standard().type("drop-6-foam");
        StudyRow row = StudyCases.grid().row(11);
        double pressed = drop.section().pinched(0.7).impedanceOhms();
        double sound = drop.section().impedanceOhms();
        assertEquals(pressed, row.impedanceOhms(), 1e-9);
        assertEquals((pressed - sound) / (pressed + sound), row.reflection(), 1e-12);
        assertEquals("clear", row.visibility());
        assertEquals(84.1, row.sight().orElseThrow().trueMetres(), 1e-9);
        assertTrue(row.sight().orElseThrow().expectedVolts() < 0);
    }

    @Test
    void deeperPinchStandsHigher() {
        Study study = StudyCases.grid();
        double shallow = study.row(0).sight().orElseThrow().contrastVolts();
        double deep = study.row(9).sight().orElseThrow().contrastVolts();
        assertTrue(deep > 3 * shallow, shallow + " V, " + deep + " V");
    }

    @Test
    void cableThatCanNotBeIsSaidInItsRow() {
        Study study =
                StudyCases.study(StudyCases.plan(Sampling.grid(), new Parameter(StudyCases.DEPTH, 0.5, 2, 2, false)));
        assertEquals("impossible", study.row(1).visibility());
        assertTrue(study.row(1).remark().contains("depthFraction"), study.row(1).remark());
        assertEquals(14, columns(study.line(1)));
    }

    private static int columns(String line) {
        return line.replaceAll("\"[^\"]*\"", "").split(",", -1).length;
    }

    @Test
    void pathThatLeadsNowhereIsRefusedWithWhatThereIs() {
        IllegalArgumentException e = assertThrows(
                IllegalArgumentException.class,
                () -> StudyCases.study(StudyCases.plan(
                        Sampling.grid(), new Parameter("/cable/events/p2/depthFraction", 0, 1, 2, false))));
        assertEquals(
                "the cable file has nothing at \"/cable/events/p2/depthFraction\": no \"p2\"; there is s1, p1",
                e.getMessage());
    }

    @Test
    void nameThatIsNeitherPathNorSettingIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Parameter("depth", 0, 1, 2, false));
        assertThrows(IllegalArgumentException.class, () -> new Parameter("pulse_s", 0, 1, 2, true));
        assertThrows(IllegalArgumentException.class, () -> Shard.parse("4/3"));
    }
}
