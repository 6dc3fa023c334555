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
@Command(name = "seal", mixinStandardHelpOptions = true)
public final class SealCommand implements Callable<Integer> {

    private static final double PERCENT = 100;

    @ParentCommand
    private RootCommand root;

    @Parameters(index = "0", paramLabel = "LESSON", descriptionKey = "parameter.lesson")
    private String lessonName;

    @Option(names = "--to", required = true, paramLabel = "KEY")
    private String publicKey;

    @Option(names = "--exercise", split = ",", paramLabel = "ID")
    private List<String> chosen = List.of();

    @Option(names = "--title", paramLabel = "TITLE")
    private Optional<String> title = Optional.empty();

    @Option(names = "--minutes", defaultValue = "90", paramLabel = "N")
    private int minutes = 90;

    @Option(names = "--pass", paramLabel = "PERCENT")
    private Optional<Double> pass = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            required = true,
            paramLabel = "FILE")
    private Path out;

    @Override
    public Integer call() {
        Output output = new Output(root.surroundings(), Optional.of(out)).checked();
        Lesson lesson = InputFiles.lesson(root.surroundings(), lessonName);
        Texts texts = ExamTexts.of(root);
        List<Exercise> exercises = new ArrayList<>();
        for (String id : chosen) {
            exercises.add(lesson.exercise(id)
                    .orElseThrow(() -> new InputProblem(texts.say(
                            "seal.noExercise",
                            id,
                            String.join(
                                    ", ",
                                    lesson.exercises().stream()
                                            .map(Exercise::id)
                                            .toList())))));
        }
        Lesson asked = exercises.isEmpty() ? lesson : with(lesson, exercises);
        double fraction = pass.map(percent -> percent / PERCENT).orElse(lesson.passMarkFraction());
        try {
            String key = ExaminerKey.checkedPublicKey(publicKey);
            String rules = new ExamRules(texts.sibling(ExamRules.BUNDLE)).text(asked);
            PaperMaker.Terms terms = new PaperMaker.Terms(title.orElse(lesson.title()), rules, minutes, fraction);
            output.write(PaperFile.bytes(new PaperMaker().make(asked, terms, key)));
        } catch (IllegalArgumentException e) {
            throw new InputProblem(texts.say("seal.cant", e.getMessage()));
        }
        root.remark(texts.say("seal.done", out));
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
