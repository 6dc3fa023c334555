// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.terminal.Instruction.Plain;
import cablewright.ui.words.LengthUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InstructionParserTest {

    private static Instruction metres(String line) {
        return new InstructionParser(LengthUnit.METRES).parse(line);
    }

    private static Instruction feet(String line) {
        return new InstructionParser(LengthUnit.FEET).parse(line);
    }

    private static Instruction.SetFlag flag(double place, EventKind kind, Verdict verdict) {
        return new Instruction.SetFlag(place, OptionalDouble.empty(), kind, verdict);
    }

    @Test
    void aFlagIsAPlaceAKindAndAVerdict() {
        assertEquals(flag(84.2, EventKind.PINCH, Verdict.DAMAGE), metres("flag 84.2 pinch damage"));
        assertEquals(flag(84.2, EventKind.CORRODED_JOINT, Verdict.DAMAGE), metres("f 84.2m corroded joint damage"));
        assertEquals(
                flag(84.2, EventKind.CORRODED_JOINT, Verdict.BELONGS), metres("FLAG 84.2 m corroded-joint belongs"));
        assertEquals(flag(30.48, EventKind.SPLICE, Verdict.BELONGS), feet("flag 100 splice belongs"));
        assertEquals(flag(100, EventKind.SPLICE, Verdict.BELONGS), feet("flag 100m splice belongs"));
    }

    @Test
    void aFlagWithoutAVerdictTakesTheUsualOne() {
        assertEquals(flag(31, EventKind.SPLICE, Verdict.BELONGS), metres("flag 31 splice"));
        assertEquals(flag(31, EventKind.PINCH, Verdict.DAMAGE), metres("flag 31 pinch"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"101-106", "106-101", "101 - 106", "101 106", "101 to 106", "101–106", "101m-106m", "101..106"})
    void aStretchIsTwoPlacesInAnyOrder(String places) {
        assertEquals(
                new Instruction.SetFlag(101, OptionalDouble.of(106), EventKind.WATER, Verdict.DAMAGE),
                metres("flag " + places + " water damage"));
    }

    @Test
    void settingsTakeTheirUnits() {
        assertEquals(new Instruction.Width(false, OptionalDouble.of(2e-9)), metres("width 2ns"));
        assertEquals(new Instruction.Width(true, OptionalDouble.of(1e-9)), metres("step 1 ns"));
        assertEquals(new Instruction.Velocity(OptionalDouble.of(0.85)), metres("velocity 85%"));
        assertEquals(new Instruction.Range(OptionalDouble.of(150)), metres("range 150"));
        assertEquals(new Instruction.Range(OptionalDouble.of(152.4)), feet("range 500"));
        assertEquals(new Instruction.Gain(OptionalDouble.of(20)), metres("gain 20"));
        assertEquals(new Instruction.Averages(OptionalDouble.of(64)), metres("average 64"));
        assertEquals(new Instruction.TestedEnd(Optional.of(LineEnd.FAR)), metres("end far"));
        assertEquals(new Instruction.Gain(OptionalDouble.empty()), metres("gain"));
        assertEquals(new Instruction.Scale(0.05), metres("scale 5%"));
        assertEquals(new Instruction.Zoom(80, 90), metres("zoom 80-90"));
        assertEquals(Plain.ZOOM_OUT, metres("zoom out"));
        assertEquals(new Instruction.At(84.2), metres("at 84.2"));
    }

    @ParameterizedTest
    @CsvSource({
        "width 2, has no unit",
        "at, at 84.2",
        "at far away, no distance in",
        "at 80-90, One distance",
        "zoom 80, from one distance to another",
        "flag, flag 84.2",
        "flag 84.2, Say what is there",
        "flag 84.2 damage, before the verdict",
        "flag 84.2 pintch damage, 'kinds' lists",
        "flag 84.2 s damage, 'kinds' lists",
        "average many, whole number",
        "end middle, 'near' and 'far'",
        "list all, stands alone",
        "hint no, hint yes",
        "dance, 'help'",
        "velocity 85, faster than light"
    })
    void mistakesAreAnsweredInASentence(String line, String said) {
        Refused refusal = assertThrows(Refused.class, () -> metres(line));
        String sentence = refusal.sentence(new Texts("cablewright.ui.terminal.terminal", Locale.ROOT));
        assertTrue(sentence.contains(said.replaceAll("^'|'$", "")), sentence);
    }

    @Property(tries = 2000)
    void whateverIsTypedIsUnderstoodOrRefused(@ForAll @StringLength(min = 1, max = 60) String anything) {
        if (!anything.isBlank()) {
            understoodOrRefused(anything);
        }
    }

    @Property(tries = 1000)
    void whateverStandsBehindFlagIsUnderstoodOrRefused(@ForAll @StringLength(max = 60) String anything) {
        understoodOrRefused("flag " + anything);
    }

    private static void understoodOrRefused(String line) {
        try {
            metres(line);
        } catch (Refused refused) {
            assertTrue(refused.sentence(new Texts("cablewright.ui.terminal.terminal", Locale.ROOT))
                            .length()
                    > 10);
        }
    }
}
