// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassList;
import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.classbook.LessonProgress;
import cablewright.lessons.classbook.RecordsCsv;
import cablewright.lessons.classbook.TraineeLog;
import cablewright.lessons.classbook.XapiStatements;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.file.FileFault;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.file.PlainFile;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.Table;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Puts trainees' logs together and hands them on. */
@Command(name = "records", mixinStandardHelpOptions = true)
public final class RecordsCommand implements Callable<Integer> {

    /** How records are written. */
    enum Format {
        /** Progress by kind, for people. */
        TEXT,
        /** One line for each event of each attempt. */
        CSV,
        /** A JSON array of statements. */
        XAPI
    }

    private static final long MOST_BYTES = 4 * 1024 * 1024;

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "LOG", arity = "1..*", descriptionKey = "parameter.log")
    private List<Path> paths;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    private Format format = Format.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--lesson", paramLabel = "LESSON", descriptionKey = "lesson")
    private Optional<String> lesson = Optional.empty();

    @Option(names = "--class", paramLabel = "CSV", descriptionKey = "class")
    private Optional<Path> classList = Optional.empty();

    @Override
    public Integer call() {
        requireOptionsThatGoTogether();
        Output output = new Output(root.surroundings(), out).checked();
        List<AttemptRecord> records = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (Path file : files()) {
            TraineeLog.Contents contents = read(file);
            records.addAll(contents.records());
            faults.addAll(contents.faults());
        }
        records.sort(Comparator.comparing(AttemptRecord::committedAt).thenComparing(AttemptRecord::trainee));
        output.write(written(records).getBytes(StandardCharsets.UTF_8));
        faults.forEach(fault -> root.surroundings().remark("cablewright: " + fault));
        return faults.isEmpty() ? ExitCode.DONE : ExitCode.INPUT_WRONG;
    }

    private static TraineeLog.Contents read(Path file) {
        try {
            return new TraineeLog(file).read();
        } catch (IOException e) {
            return new TraineeLog.Contents(List.of(), List.of(FileFault.reading(file, e)));
        }
    }

    private List<Path> files() {
        List<Path> files = new ArrayList<>();
        for (Path path : paths) {
            Path resolved = root.surroundings().folder().resolve(path);
            if (Files.isDirectory(resolved)) {
                files.addAll(logsIn(resolved));
            } else if (Files.exists(resolved)) {
                files.add(resolved);
            } else {
                throw InputProblem.of("records.missing", resolved);
            }
        }
        return files;
    }

    private static List<Path> logsIn(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> logs = all.filter(file -> file.toString().endsWith(".jsonl"))
                    .sorted()
                    .toList();
            if (logs.isEmpty()) {
                throw InputProblem.of("records.noLogs", folder);
            }
            return logs;
        } catch (IOException e) {
            throw new InputProblem(FileFault.reading(folder, e));
        }
    }

    private void requireOptionsThatGoTogether() {
        if (classList.isPresent() && lesson.isEmpty()) {
            throw InputProblem.of("records.classNeedsLesson");
        }
        if (lesson.isPresent() && format == Format.XAPI) {
            throw InputProblem.of("records.lessonIsTable");
        }
    }

    private String written(List<AttemptRecord> records) {
        if (lesson.isPresent()) {
            Table table = progress(InputFiles.lesson(root.surroundings(), lesson.get()), records);
            return format == Format.CSV
                    ? table.csv()
                    : root.surroundings().style().plain(table.aligned());
        }
        return switch (format) {
            case CSV -> RecordsCsv.of(records);
            case XAPI -> new XapiStatements().of(records);
            case TEXT -> root.surroundings().style().plain(text(ClassSummary.of(records)));
        };
    }

    private Table progress(Lesson set, List<AttemptRecord> records) {
        Table table = new Table("name", "done", "of", "marks %", root.say("records.head.digs"), "last");
        for (LessonProgress one : LessonProgress.of(set, records, names())) {
            boolean begun = one.maximum() > 0;
            table.add(
                    format == Format.CSV ? RecordsCsv.withoutFormula(one.trainee()) : one.trainee(),
                    String.valueOf(one.done()),
                    String.valueOf(one.of()),
                    begun ? Quantities.number(100 * one.marks() / one.maximum(), 0) : "",
                    String.valueOf(one.needlessDigs()),
                    one.lastAt().map(Instant::toString).orElse(""));
        }
        return table;
    }

    private List<String> names() {
        if (classList.isEmpty()) {
            return List.of();
        }
        Path file = root.surroundings().folder().resolve(classList.get());
        try (InputStream in = PlainFile.open(file, MOST_BYTES)) {
            return ClassList.parse(file.toString(), new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .names();
        } catch (IOException e) {
            throw new InputProblem(FileFault.reading(file, e));
        } catch (IllegalArgumentException e) {
            throw new InputProblem(e.getMessage());
        }
    }

    private String text(ClassSummary summary) {
        Words words = root.words();
        Table table = new Table(
                root.say("records.head.kind"),
                root.say("records.head.asked"),
                root.say("records.head.success"),
                root.say("records.head.recent"),
                root.say("records.head.missed"));
        for (EventKind kind : EventKind.values()) {
            ClassSummary.KindProgress progress = summary.byKind().get(kind);
            if (progress != null) {
                table.add(
                        words.kind(kind),
                        String.valueOf(progress.asked()),
                        Quantities.number(100 * progress.meanSuccess(), 0),
                        Quantities.number(100 * progress.recentSuccess(), 0),
                        String.valueOf(summary.missed().getOrDefault(kind, 0)));
            }
        }
        StringBuilder text = new StringBuilder(table.aligned());
        text.append('\n')
                .append(root.say(
                        "records.summary",
                        summary.attempts(),
                        Quantities.number(100 * summary.meanFraction(), 0),
                        summary.needlessDigs(),
                        summary.damageMissed(),
                        summary.damageLeft()))
                .append('\n');
        for (EventKind truth : EventKind.values()) {
            Map<EventKind, Integer> taken = summary.takenFor().getOrDefault(truth, Map.of());
            taken.entrySet().stream()
                    .filter(entry -> entry.getKey() != truth)
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(entry -> text.append(root.say(
                                    "records.takenFor",
                                    words.kind(truth),
                                    words.kind(entry.getKey()),
                                    entry.getValue()))
                            .append('\n'));
        }
        return text.toString();
    }
}
