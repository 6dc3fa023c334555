// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.result.ClassTable;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.ExerciseFingerprint;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.Marker;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.ListFormat;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.MarkReport;
import cablewright.ui.commandline.output.Marked;
import cablewright.ui.commandline.output.Output;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Marks attempts. */
@Command(name = "mark", mixinStandardHelpOptions = true)
public final class MarkCommand implements Callable<Integer> {

    @ParentCommand
    private RootCommand root;

    @Parameters(index = "0", paramLabel = "LESSON", descriptionKey = "parameter.lesson")
    private String lessonName;

    @Parameters(index = "1..*", paramLabel = "ATTEMPTS", arity = "1..*", descriptionKey = "parameter.attempts")
    private List<Path> paths;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    private ListFormat format = ListFormat.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--key", paramLabel = "FILE")
    private Optional<Path> key = Optional.empty();

    @Option(names = "--reports", paramLabel = "FOLDER")
    private Optional<Path> reports = Optional.empty();

    @Option(names = "--due", paramLabel = "TIME")
    private Optional<Instant> due = Optional.empty();

    private final Marker marker = new Marker();
    private int problems;

    @Override
    public Integer call() {
        Output output = new Output(root.surroundings(), out).checked();
        if (key.isPresent()) {
            return sealed(output);
        }
        Lesson lesson = InputFiles.lesson(root.surroundings(), lessonName);
        List<Path> files = files();
        List<Marked> all = new ArrayList<>();
        int done = 0;
        for (Path file : files) {
            all.addAll(markFile(lesson, file));
            if (++done % 10 == 0 && done < files.size()) {
                root.remark(root.say("mark.done", done, files.size()));
            }
        }
        output.write(written(new MarkReport(all, root.words())));
        return problems == 0 ? ExitCode.DONE : ExitCode.INPUT_WRONG;
    }

    private int sealed(Output output) {
        Path folder = root.surroundings().folder();
        try (StopRequest stop = new StopRequest()) {
            return sealed(output, folder, stop);
        }
    }

    private int sealed(Output output, Path folder, StopRequest stop) {
        try {
            ClassMarker classMarker = new ClassMarker(
                    root, paper(folder.resolve(lessonName)), folder.resolve(key.orElseThrow()), due, stop);
            List<Path> files = paths.stream()
                    .map(folder::resolve)
                    .flatMap(
                            path -> Files.isDirectory(path) ? ClassMarker.within(root, path).stream() : Stream.of(path))
                    .toList();
            if (files.isEmpty()) {
                throw new InputProblem(ExamTexts.of(root).say("mark.noAnswers", folder.resolve(paths.get(0))));
            }
            ClassResult result = classMarker.mark(files);
            classMarker.setAside(result).forEach(sentence -> root.surroundings().remark("cablewright: " + sentence));
            reports.ifPresent(target -> classMarker.write(result, folder.resolve(target)));
            output.write(table(classMarker, result).getBytes(StandardCharsets.UTF_8));
            return result.setAside().isEmpty() ? ExitCode.DONE : ExitCode.INPUT_WRONG;
        } catch (InputProblem e) {
            if (!stop.getAsBoolean()) {
                throw e;
            }
            // Said here, since a stopped program ends before anybody else could say it.
            e.problems(root.surroundings())
                    .forEach(problem -> root.surroundings().remark("cablewright: " + problem));
            return ExitCode.INPUT_WRONG;
        }
    }

    private String table(ClassMarker classMarker, ClassResult result) {
        ClassTable table = new ClassTable(result);
        return switch (format) {
            case CSV -> table.csv();
            case JSON -> table.json();
            case TEXT -> root.surroundings().style().plain(classMarker.text(result));
        };
    }

    private PaperFile paper(Path file) {
        try {
            return PaperFile.read(file);
        } catch (LessonFormatException e) {
            throw new InputProblem(InputFiles.sentences(e));
        } catch (IOException e) {
            throw new InputProblem(ExamTexts.of(root).say("paper.unreadable", file));
        }
    }

    private List<Path> files() {
        List<Path> files = new ArrayList<>();
        for (Path path : paths) {
            Path resolved = root.surroundings().folder().resolve(path);
            files.addAll(Files.isDirectory(resolved) ? within(resolved) : List.of(resolved));
        }
        return files;
    }

    private static List<Path> within(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> files = all.filter(file -> file.getFileName().toString().endsWith(".json"))
                    .sorted()
                    .toList();
            if (files.isEmpty()) {
                throw InputProblem.of("mark.noFiles", folder);
            }
            return files;
        } catch (IOException e) {
            throw InputProblem.of("file.noFolder", folder);
        }
    }

    private List<Marked> markFile(Lesson lesson, Path file) {
        List<Marked> marked = new ArrayList<>();
        try {
            for (Attempt attempt : InputFiles.attempts(file).attempts()) {
                marked.add(markOne(lesson, file, attempt));
            }
        } catch (InputProblem e) {
            problems++;
            e.problems(root.surroundings())
                    .forEach(problem -> root.surroundings().remark("cablewright: " + problem));
        }
        return marked;
    }

    private Marked markOne(Lesson lesson, Path file, Attempt attempt) {
        Exercise exercise = lesson.exercise(attempt.exerciseId())
                .orElseThrow(() -> InputProblem.of(
                        "mark.noExercise",
                        file,
                        attempt.exerciseId(),
                        lesson.id(),
                        String.join(
                                ", ",
                                lesson.exercises().stream().map(Exercise::id).toList())));
        if (!ExerciseFingerprint.fits(attempt, exercise)) {
            throw new InputProblem(
                    ExamTexts.of(root).say("mark.otherExercise", file, exercise.id(), exercise.title(), lesson.id()));
        }
        MarkSheet sheet = InputFiles.refusalsOf(file, () -> marker.mark(exercise, attempt));
        return new Marked(file, exercise, sheet);
    }

    private byte[] written(MarkReport report) {
        String text =
                switch (format) {
                    case CSV -> report.csv();
                    case JSON -> report.json();
                    case TEXT -> root.surroundings().style().plain(report.text());
                };
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
