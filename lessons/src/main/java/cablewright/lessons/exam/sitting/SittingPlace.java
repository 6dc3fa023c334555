// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import cablewright.lessons.file.FileWord;
import java.nio.file.Path;

/**
 * Where a sitting is kept, and where its sealed answers go: beside the paper, under the trainee's name.
 *
 * @param kept the file of the running sitting
 * @param answers the sealed answers
 */
public record SittingPlace(Path kept, Path answers) {

    /** How the file of a running sitting ends. */
    public static final String KEPT = ".sitting.json";

    /** How sealed answers end. */
    public static final String ANSWERS = ".answers.age";

    /**
     * Finds the usual place.
     *
     * @param paper the file of the paper
     * @param trainee who sits
     * @return two files in the paper's folder
     */
    public static SittingPlace beside(Path paper, String trainee) {
        Path file = paper.toAbsolutePath();
        String word = FileWord.of(trainee);
        return new SittingPlace(file.resolveSibling(word + KEPT), file.resolveSibling(word + ANSWERS));
    }
}
