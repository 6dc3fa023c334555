// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.BenchView;
import cablewright.ui.desktop.bench.SystemClipboard;
import cablewright.ui.desktop.bench.model.BenchStore;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.trial.TrialStack;
import cablewright.ui.desktop.classbook.ClassBookView;
import cablewright.ui.desktop.classbook.ClassBookViewModel;
import cablewright.ui.desktop.demonstrations.DemonstrationsView;
import cablewright.ui.desktop.exam.ExamPages;
import cablewright.ui.desktop.measured.MeasuredView;
import cablewright.ui.desktop.measured.MeasuredViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.Words;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;

/** The pages of the window, in the order of the bar. Another page is one more line in {@link #with}. */
final class Pages {

    /** Name of the Bench's page. */
    static final String BENCH = "bench";

    private final WindowViewModel model;
    private final Threads threads;
    private final ClassRecords records;
    private final BenchStore benchStore;
    private final Texts texts;
    private final Consumer<EventKind> round;
    private ExamPages classBook;
    private MeasuredView measured;
    private Lesson lesson;
    private DemonstrationsView demonstrations;
    private BenchView bench;
    private TrialStack trial;

    Pages(
            WindowViewModel model,
            Threads threads,
            ClassRecords records,
            BenchStore benchStore,
            Texts texts,
            Consumer<EventKind> round) {
        this.round = round;
        this.model = model;
        this.threads = threads;
        this.records = records;
        this.benchStore = benchStore;
        this.texts = texts;
    }

    /** The pages around a lesson; those that do not hang on it are kept from lesson to lesson. */
    List<Page> with(Page.Content practice, Lesson opened) {
        lesson = opened;
        return List.of(
                new Page("practice", () -> practice),
                new Page("demonstrations", this::demonstrations),
                new Page("classbook", this::classBook),
                new Page(BENCH, this::bench),
                new Page("measured", this::measured));
    }

    private Page.Content demonstrations() {
        if (demonstrations == null) {
            demonstrations = new DemonstrationsView(model.unitProperty(), threads, texts.locale());
        }
        DemonstrationsView shown = demonstrations;
        return content(shown, shown::start, () -> shown);
    }

    private Page.Content classBook() {
        if (classBook == null) {
            ClassBookView attempts = new ClassBookView(
                    new ClassBookViewModel(records, threads, texts),
                    model.traineeProperty(),
                    model.unitProperty(),
                    () -> lesson,
                    round,
                    texts);
            classBook = new ExamPages(
                    attempts,
                    attempts::start,
                    () -> lesson,
                    model.traineeProperty(),
                    model.unitProperty(),
                    records,
                    threads,
                    texts);
        }
        ExamPages shown = classBook;
        return content(shown, shown::start, shown::picture);
    }

    private Page.Content bench() {
        if (bench == null) {
            BenchViewModel made = new BenchViewModel(
                    BenchTemplate.PLAIN_CABLE.document(texts.locale(), new SecureRandom()),
                    model.unitProperty(),
                    threads,
                    new SystemClipboard(),
                    benchStore,
                    texts.sibling(BenchView.BUNDLE),
                    texts);
            trial = new TrialStack(
                    () -> made.document().now(), model.unitProperty(), threads, Clock.systemUTC(), texts.locale());
            bench = new BenchView(made, texts, model.unitProperty(), trial::open);
            trial.put(bench);
        }
        return new BenchPage(bench, trial);
    }

    /** The Bench, once it was opened. */
    Optional<BenchView> opened() {
        return Optional.ofNullable(bench);
    }

    /**
     * Asked before the window closes.
     *
     * @param close closes the window without asking again
     * @return whether it may close now; if not, the Bench asks what is to become of work that was not saved
     */
    boolean mayClose(Runnable close) {
        return bench == null || bench.mayClose(close);
    }

    private Page.Content measured() {
        if (measured == null) {
            measured = new MeasuredView(
                    new MeasuredViewModel(model.unitProperty(), threads, texts),
                    texts,
                    Words.in(model.unitProperty().get(), texts.locale()));
        }
        return new MeasuredPage(measured);
    }

    Page.Content content(Node node, Runnable start, Supplier<Node> picture) {
        return new Page.Content() {
            @Override
            public Node node() {
                return node;
            }

            @Override
            public void start() {
                start.run();
            }

            @Override
            public Node picture() {
                return picture.get();
            }
        };
    }
}
