// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.making.PaperMaker;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.words.ExamRules;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Sealed papers. */
@Command(
        name = "seal",
        mixinStandardHelpOptions = true,
        header = {"Makes a sealed paper of a lesson or of chosen exercises.", ""},
        description = {
            "The paper holds what trainees see and what each end of each line shows. Cables, answers, explanations and hints are "
                    + "sealed to the public key of the examiner. Order, names and noise are drawn anew each time.",
            "Keep the file as it was given out: answers are bound to its bytes. Don't seal exercises that trainees have had, nor "
                    + "exercises generated from a seed that can be guessed.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  cablewright seal lesson.json --to age1... --minutes 90 --out paper.json",
            "  cablewright seal lesson.json --exercise quay-3,quay-7 --to age1... --pass 60 --out paper.json"
        })
public final class SealCommand implements Callable<Integer> {

    private static final double PERCENT = 100;

    @ParentCommand
    private RootCommand root;

    @Parameters(
            index = "0",
            paramLabel = "LESSON",
            description = "A lesson or exercise file, or 'built-in' for the lesson that comes with the program.")
    private String lessonName;

    @Option(
            names = "--to",
            required = true,
            paramLabel = "KEY",
            description = "The examiner's public key, age1..., as 'cablewright keys show' prints it.")
    private String publicKey;

    @Option(
            names = "--exercise",
            split = ",",
            paramLabel = "ID",
            description = "Exercises to ask; usual are all of the lesson.")
    private List<String> chosen = List.of();

    @Option(names = "--title", paramLabel = "TITLE", description = "Title of the exam; usual is the lesson's.")
    private Optional<String> title = Optional.empty();

    @Option(
            names = "--minutes",
            defaultValue = "90",
            paramLabel = "N",
            description = "Time for the whole paper, 1 to 600; usual is ${DEFAULT-VALUE}.")
    private int minutes = 90;

    @Option(
            names = "--pass",
            paramLabel = "PERCENT",
            description = "Share of the marks from which it is passed; usual is the lesson's.")
    private Optional<Double> pass = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            required = true,
            paramLabel = "FILE",
            description = "File of the paper.")
    private Path out;

    @Override
    public Integer call() {
        Output output = new Output(root.surroundings(), Optional.of(out)).checked();
        Lesson lesson = InputFiles.lesson(root.surroundings(), lessonName);
        List<Exercise> exercises = new ArrayList<>();
        for (String id : chosen) {
            exercises.add(lesson.exercise(id)
                    .orElseThrow(() -> new InputProblem("--exercise is \"" + id + "\"; the lesson has "
                            + String.join(
                                    ", ",
                                    lesson.exercises().stream()
                                            .map(Exercise::id)
                                            .toList()))));
        }
        Lesson asked = exercises.isEmpty() ? lesson : with(lesson, exercises);
        double fraction = pass.map(percent -> percent / PERCENT).orElse(lesson.passMarkFraction());
        try {
            String key = ExaminerKey.checkedPublicKey(publicKey);
            String rules = new ExamRules(
                            new Texts(ExamRules.BUNDLE, root.surroundings().locale()))
                    .text();
            PaperMaker.Terms terms = new PaperMaker.Terms(title.orElse(lesson.title()), rules, minutes, fraction);
            output.write(PaperFile.bytes(new PaperMaker().make(asked, terms, key)));
        } catch (IllegalArgumentException e) {
            throw new InputProblem("the paper can't be sealed: " + e.getMessage());
        }
        root.remark("The paper is in " + out + ". Give out copies of this file and keep it as it is.");
        return ExitCode.DONE;
    }

    private static Lesson with(Lesson lesson, List<Exercise> exercises) {
        return new Lesson(
                lesson.id(),
                lesson.title(),
                lesson.introduction(),
                lesson.worldNote(),
                lesson.passMarkFraction(),
                exercises);
    }
}
