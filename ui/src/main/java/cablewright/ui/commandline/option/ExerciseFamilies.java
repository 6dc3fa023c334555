// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.lessons.generation.ExerciseFamily;
import cablewright.ui.commandline.environment.InputProblem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Families of generated exercises as they are named on the command line. */
public final class ExerciseFamilies {

    private ExerciseFamilies() {}

    /** Returns the named families, or all of them if none is named. */
    public static List<ExerciseFamily> of(List<String> names) {
        return names.isEmpty()
                ? List.of(ExerciseFamily.values())
                : names.stream().map(ExerciseFamilies::family).toList();
    }

    private static ExerciseFamily family(String word) {
        Function<ExerciseFamily, String> name =
                family -> family.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Arrays.stream(ExerciseFamily.values())
                .filter(family -> name.apply(family).equals(word))
                .findFirst()
                .orElseThrow(() -> InputProblem.of(
                        "option.family",
                        word,
                        Arrays.stream(ExerciseFamily.values()).map(name).collect(Collectors.joining(", "))));
    }
}
