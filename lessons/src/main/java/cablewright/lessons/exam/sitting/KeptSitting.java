// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.format.LessonFormatException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A sitting that was begun, and can be taken up or handed in again.
 *
 * @param file where it is kept
 * @param trainee who sits
 * @param answered how many lines have a flag or an answer
 * @param isHandedIn whether it was handed in
 */
public record KeptSitting(Path file, String trainee, int answered, boolean isHandedIn) {

    private static final int MOST_FILES = 1000;

    /**
     * Looks for sittings of a paper in its folder. Files that can't be read, and sittings of other papers, are passed over.
     *
     * @param paperFile the file of the paper
     * @param paper what is in it
     * @return the sittings, by file name
     * @throws IOException if the folder can't be read
     */
    public static List<KeptSitting> beside(Path paperFile, PaperFile paper) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(paperFile.toAbsolutePath().getParent())) {
            files = all.filter(file -> file.getFileName().toString().endsWith(SittingPlace.KEPT))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .limit(MOST_FILES)
                    .toList();
        }
        List<KeptSitting> found = new ArrayList<>();
        for (Path file : files) {
            try {
                SittingFile.read(file)
                        .filter(answers -> answers.paperSha256().equals(paper.sha256()))
                        .map(answers -> of(file, answers))
                        .ifPresent(found::add);
            } catch (IOException | LessonFormatException e) {
                // Not a sitting that could be taken up; whoever chooses it by hand hears why.
                continue;
            }
        }
        return found;
    }

    private static KeptSitting of(Path file, ExamAnswers answers) {
        int answered = (int) answers.attempts().stream()
                .filter(attempt -> !attempt.flags().isEmpty()
                        || attempt.predictedChoiceId().isPresent())
                .count();
        return new KeptSitting(
                file, answers.trainee(), answered, answers.handedInAt().isPresent());
    }
}
