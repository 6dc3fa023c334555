// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.file.FileFault;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.generation.Contrast;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.ExerciseFamilies;
import cablewright.ui.commandline.option.RootCommand;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Makes exercises. */
@Command(name = "generate", mixinStandardHelpOptions = true)
public final class GenerateCommand implements Callable<Integer> {

    private static final int MOST = 10_000;

    @ParentCommand
    private RootCommand root;

    @Option(names = "--seed", paramLabel = "SEED", defaultValue = "1")
    private long seed = 1;

    @Option(names = "--difficulty", paramLabel = "0-1", defaultValue = "0.3")
    private double difficulty = 0.3;

    @Option(names = "--kinds", paramLabel = "KIND", split = ",")
    private List<String> kinds = List.of();

    @Option(names = "--family", paramLabel = "FAMILY", split = ",")
    private List<String> families = List.of();

    @Option(names = "--contrast", paramLabel = "CONTRAST")
    private String contrast = "none";

    @Option(names = "--count", paramLabel = "N", defaultValue = "1")
    private int count = 1;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            required = true)
    private Path out;

    @Override
    public Integer call() {
        if (count < 1 || count > MOST) {
            throw InputProblem.of("option.range", "--count", count, 1, MOST);
        }
        Path folder = folder();
        List<GenerationRequest> requests = requests();
        List<Path> files = requests.stream()
                .map(request -> folder.resolve(request.exerciseId() + ".json"))
                .toList();
        files.stream().filter(Files::exists).findFirst().ifPresent(file -> {
            throw InputProblem.of("generate.exists", file);
        });
        ExerciseGenerator generator = new ExerciseGenerator();
        StringBuilder names = new StringBuilder();
        for (int i = 0; i < count; i++) {
            write(files.get(i), made(generator, requests.get(i)));
            names.append(files.get(i)).append('\n');
        }
        root.surroundings().writeOut(names.toString().getBytes(StandardCharsets.UTF_8));
        root.remark(root.say("generate.made", count));
        return ExitCode.DONE;
    }

    private static Exercise made(ExerciseGenerator generator, GenerationRequest request) {
        try {
            return generator.generate(request);
        } catch (IllegalStateException e) {
            throw new InputProblem(e.getMessage());
        }
    }

    private static void write(Path file, Exercise exercise) {
        try {
            AtomicSave.save(file, new DocumentWriter().bytes(new Document.OfExercise(exercise)));
        } catch (IOException e) {
            throw new InputProblem(FileFault.writing(file, e));
        }
    }

    private Path folder() {
        Path folder = root.surroundings().folder().resolve(out);
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw InputProblem.of("generate.noFolder", folder);
        }
    }

    private Contrast contrast() {
        return Arrays.stream(Contrast.values())
                .filter(one -> word(one).equals(contrast))
                .findFirst()
                .orElseThrow(() -> new InputProblem(root.say(
                        "generate.contrast",
                        contrast,
                        Arrays.stream(Contrast.values())
                                .map(GenerateCommand::word)
                                .collect(Collectors.joining(", ")))));
    }

    private static String word(Contrast one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private List<GenerationRequest> requests() {
        List<ExerciseFamily> chosen = ExerciseFamilies.of(families);
        List<GenerationRequest> requests = new ArrayList<>();
        try {
            Contrast wanted = contrast();
            List<EventKind> damage = kinds.stream().map(EventKind::ofId).toList();
            for (int i = 0; i < count; i++) {
                requests.add(new GenerationRequest(seed + i, chosen, damage, difficulty, wanted));
            }
        } catch (IllegalArgumentException e) {
            throw new InputProblem(e.getMessage());
        }
        return requests;
    }

    /** The families of these names; all of them where none is named. */
}
