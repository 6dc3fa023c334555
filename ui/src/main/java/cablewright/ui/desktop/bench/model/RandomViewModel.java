// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.ExerciseGenerator;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.task.LatestRun;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A plausible cable drawn by chance: from which seed, on what kind of line, how hard. */
public final class RandomViewModel {

    private static final int SEEDS = 1_000_000;

    private final BenchViewModel bench;
    private final Texts texts;
    private final LatestRun runs;
    private final StringProperty seed = new SimpleStringProperty();
    private final ObjectProperty<Optional<ExerciseFamily>> family = new SimpleObjectProperty<>(Optional.empty());
    private final DoubleProperty difficulty = new SimpleDoubleProperty(0.3);
    private final BooleanProperty adds = new SimpleBooleanProperty();
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper("");

    public RandomViewModel(BenchViewModel bench, RandomGenerator chance) {
        this.bench = bench;
        this.texts = bench.texts();
        this.runs = new LatestRun(bench.threads());
        seed.set(Integer.toString(1 + chance.nextInt(SEEDS)));
        seed.addListener(changed -> check());
    }

    private Optional<Long> check() {
        try {
            long value = Long.parseLong(seed.get().strip());
            fault.set("");
            return Optional.of(value);
        } catch (NumberFormatException e) {
            fault.set(texts.say("random.fault"));
            return Optional.empty();
        }
    }

    /**
     * Makes the exercise and puts it on the Bench.
     *
     * @param done what is done once it is there
     */
    public void make(Runnable done) {
        Optional<Long> value = check();
        if (value.isEmpty()) {
            return;
        }
        List<ExerciseFamily> families = family.get().map(List::of).orElse(List.of(ExerciseFamily.values()));
        GenerationRequest request = new GenerationRequest(value.get(), families, List.of(), difficulty.get());
        working.set(true);
        runs.ask(
                () -> new ExerciseGenerator(texts.locale()).generate(request),
                made -> {
                    working.set(false);
                    if (adds.get()) {
                        bench.document().step(texts.say("do.addRandom"), before -> before.adding(made));
                    } else {
                        bench.files().start(BenchDocument.of(made, texts.locale()));
                    }
                    done.run();
                },
                problem -> {
                    working.set(false);
                    fault.set(String.valueOf(problem.getMessage()));
                });
    }

    /** The seed as it is typed. @return the same seed makes the same cable */
    public StringProperty seedProperty() {
        return seed;
    }

    /** The kind of line. @return empty for any */
    public ObjectProperty<Optional<ExerciseFamily>> familyProperty() {
        return family;
    }

    public DoubleProperty difficultyProperty() {
        return difficulty;
    }

    /** Whether it goes into the open lesson. @return false for a document of its own */
    public BooleanProperty addsProperty() {
        return adds;
    }

    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }
}
