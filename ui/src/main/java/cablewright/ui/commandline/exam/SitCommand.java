// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.sitting.Sitting;
import cablewright.lessons.exam.sitting.SittingPlace;
import cablewright.lessons.format.LessonFormatException;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.practice.TerminalDesk;
import cablewright.ui.terminal.SittingTerminal;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Sitting a sealed paper. */
@Command(name = "sit", mixinStandardHelpOptions = true)
public final class SitCommand implements Callable<Integer> {

    private static final int SECONDS_BETWEEN_SAVES = 5;

    @ParentCommand
    private RootCommand root;

    @Parameters(index = "0", paramLabel = "PAPER", descriptionKey = "parameter.paper")
    private Path paperName;

    @Option(names = "--trainee", required = true, paramLabel = "NAME")
    private String trainee;

    @Option(names = "--keep", paramLabel = "FILE")
    private Optional<Path> keep = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        Environment surroundings = root.surroundings();
        Path file = surroundings.folder().resolve(paperName);
        SittingPlace usual = SittingPlace.beside(file, trainee);
        Path kept = keep.map(surroundings.folder()::resolve).orElse(usual.kept());
        Path target = out.map(surroundings.folder()::resolve).orElse(usual.answers());
        if (!Files.isRegularFile(file)) {
            throw new InputProblem(ExamTexts.of(root).say("missing", file));
        }
        try (Sitting sitting = Sitting.open(PaperFile.read(file), trainee, kept, Clock.systemUTC(), System::nanoTime)) {
            sit(sitting, target);
            return ExitCode.DONE;
        } catch (LessonFormatException e) {
            throw new InputProblem(InputFiles.sentences(e));
        } catch (IOException e) {
            throw new InputProblem(e.getMessage());
        }
    }

    private void sit(Sitting sitting, Path target) throws IOException {
        Environment surroundings = root.surroundings();
        SittingTerminal terminal = new SittingTerminal(
                sitting, target, new TerminalDesk(surroundings, root.lengthUnit(), trainee).screen());
        ScheduledExecutorService saver = Executors.newSingleThreadScheduledExecutor(SitCommand::daemon);
        saver.scheduleAtFixedRate(() -> tick(sitting), SECONDS_BETWEEN_SAVES, SECONDS_BETWEEN_SAVES, TimeUnit.SECONDS);
        try {
            surroundings.print(terminal.opening());
            BufferedReader in = new BufferedReader(new InputStreamReader(surroundings.in(), StandardCharsets.UTF_8));
            while (!terminal.finished()) {
                surroundings.print("\n" + terminal.prompt());
                String line = in.readLine();
                if (line == null) {
                    surroundings.print("\n");
                    return;
                }
                surroundings.print(terminal.answer(line));
            }
        } finally {
            saver.shutdownNow();
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "sitting-saver");
        thread.setDaemon(true);
        return thread;
    }

    /** What can't be kept here is said at the next change, which fails the same way. */
    private static void tick(Sitting sitting) {
        try {
            sitting.tick();
        } catch (IOException e) {
            Thread.currentThread().interrupt();
        }
    }
}
