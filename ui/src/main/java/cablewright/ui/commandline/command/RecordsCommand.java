// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassSummary;
import cablewright.lessons.classbook.RecordsCsv;
import cablewright.lessons.classbook.TraineeLog;
import cablewright.lessons.classbook.XapiStatements;
import cablewright.lessons.file.FileFault;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.Table;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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

    @Override
    public Integer call() {
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
                throw new InputProblem(resolved + ": there is no such file; name a log or a folder of logs");
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
                throw new InputProblem(folder + ": this folder has no file that ends in .jsonl; name one with logs");
            }
            return logs;
        } catch (IOException e) {
            throw new InputProblem(FileFault.reading(folder, e));
        }
    }

    private String written(List<AttemptRecord> records) {
        return switch (format) {
            case CSV -> RecordsCsv.of(records);
            case XAPI -> new XapiStatements().of(records);
            case TEXT -> root.surroundings().style().plain(text(ClassSummary.of(records)));
        };
    }

    private String text(ClassSummary summary) {
        Words words = root.words();
        Table table = new Table("kind", "asked", "success %", "last five %", "missed");
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
                .append(summary.attempts())
                .append(" attempts, ")
                .append(Quantities.number(100 * summary.meanFraction(), 0))
                .append(" % of the marks, ")
                .append(summary.needlessDigs())
                .append(" needless digs, ")
                .append(summary.damageMissed())
                .append(" damages missed, ")
                .append(summary.damageLeft())
                .append(" called 'belongs'\n");
        for (EventKind truth : EventKind.values()) {
            Map<EventKind, Integer> taken = summary.takenFor().getOrDefault(truth, Map.of());
            taken.entrySet().stream()
                    .filter(entry -> entry.getKey() != truth)
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(entry -> text.append(words.kind(truth))
                            .append(" taken for ")
                            .append(words.kind(entry.getKey()))
                            .append(": ")
                            .append(entry.getValue())
                            .append('\n'));
        }
        return text.toString();
    }
}
