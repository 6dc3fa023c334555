// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.practice.PracticeSession;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.model.BenchStore;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.practice.PracticeView;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.measured.MeasuredLine;
import cablewright.ui.words.Words;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;

/** One window of the desktop: a stage with a lesson in it. */
final class DesktopWindow {

    private static final String BUNDLE = "cablewright.ui.desktop.shell.desktop";
    private static final String STYLE = "desktop.css";
    private static final double WIDTH_PIXELS = 1440;
    private static final double HEIGHT_PIXELS = 900;

    private static final int MOST_NAME = 60;
    /** How long a window manager may take to place a new window. */
    private static final double SETTLING_MILLISECONDS = 250;

    private static final double LEAST_WIDTH_PIXELS = 1280;
    private static final double LEAST_HEIGHT_PIXELS = 720;

    private final Stage stage;
    private final WindowMemory memory;
    private final Threads threads;
    private final LatestRun files;
    private final WindowViewModel model = new WindowViewModel();
    private final Texts texts;
    private final Pages pages;
    private WindowView view;
    private PracticeViewModel practice;
    private final ClassRecords records;
    private final PracticeStarter sittings;

    DesktopWindow(Stage stage, WindowMemory memory, Threads threads) {
        this(stage, memory, threads, ClassRecords.inMemory());
    }

    DesktopWindow(Stage stage, WindowMemory memory, Threads threads, ClassRecords records) {
        this(stage, memory, threads, records, BenchStore.none());
    }

    DesktopWindow(Stage stage, WindowMemory memory, Threads threads, ClassRecords records, BenchStore benchStore) {
        this(stage, memory, threads, records, benchStore, Locale.ROOT);
    }

    DesktopWindow(
            Stage stage,
            WindowMemory memory,
            Threads threads,
            ClassRecords records,
            BenchStore benchStore,
            Locale locale) {
        this.texts = new Texts(BUNDLE, locale);
        this.stage = stage;
        this.memory = memory;
        this.records = records;
        this.sittings = new PracticeStarter(records, texts, Clock.systemUTC());
        this.threads = threads;
        this.files = new LatestRun(threads);
        this.pages = new Pages(model, threads, records, benchStore, texts);
        model.darkProperty().addListener((o, before, now) -> useTheme(now));
    }

    /** Hears of the program's own faults, and says so above the work. */
    Thread.UncaughtExceptionHandler faults(List<Path> folders) {
        return new FaultWatch(
                folders,
                threads.screen(),
                sentence -> Optional.ofNullable(view).ifPresent(it -> it.tell(sentence)),
                texts);
    }

    /** Opens the window before there is a lesson to show in it. */
    void showOpening() {
        Label opening = new Label(texts.say("window.opening"));
        opening.getStyleClass().add("quiet");
        StackPane page = new StackPane(opening);
        page.getStyleClass().add("window");
        content(page);
    }

    /** Shows a lesson, in place of what was shown. */
    void show(Lesson lesson) {
        show(lesson, Optional.empty());
    }

    private void show(Lesson lesson, Optional<PracticeSession> session) {
        practice = new PracticeViewModel(
                lesson,
                session,
                sheet -> keep(sheet, lesson, session),
                model.unitProperty(),
                threads,
                texts,
                Clock.systemUTC());
        Words words = Words.in(model.unitProperty().get(), texts.locale());
        Optional.ofNullable(view).ifPresent(WindowView::close);
        view = new WindowView(
                model,
                pages.with(new PracticeView(practice, texts, words), lesson),
                new PractiseMenu(lesson.title(), texts, this::practise, () -> openFirst(Optional.empty())),
                this::choose,
                texts);
        content(view);
        view.start();
    }

    /** Starts a practice session, in place of what was shown; where nothing is due, says so. */
    void practise(PractiseMenu.Wish wish) {
        String trainee = trainee();
        Optional<Lesson> opened = Optional.ofNullable(practice).map(PracticeViewModel::lesson);
        files.ask(
                () -> sittings.start(wish, trainee, opened),
                sitting -> sitting.ifPresentOrElse(
                        begun -> show(begun.lesson(), Optional.of(begun.session())),
                        () -> view.tell(texts.say("practise.nothingDue"))),
                this::tell);
    }

    private String trainee() {
        String name = model.traineeProperty().get().strip();
        String usual = texts.say("trainee");
        return name.isEmpty() ? usual : name.substring(0, Math.min(MOST_NAME, name.length()));
    }

    /** Lets the sitting learn from an attempt, and keeps it in the trainee's log. */
    private void keep(MarkSheet sheet, Lesson lesson, Optional<PracticeSession> session) {
        Instant now = Clock.systemUTC().instant();
        AttemptRecord record = session.map(sitting -> sitting.record(sheet, now))
                .orElseGet(() -> AttemptRecord.of(sheet, lesson, now))
                .by(trainee());
        session.ifPresent(sitting -> sitting.learn(record));
        threads.work().execute(() -> {
            try {
                records.append(record);
            } catch (IOException e) {
                threads.screen()
                        .execute(() -> view.tell(texts.say("practise.notKept", String.valueOf(e.getMessage()))));
            }
        });
    }

    /**
     * Opens a file, or the built-in lesson where none was named. If the file can't be used, the built-in lesson is there
     * all the same, and says why.
     */
    void openFirst(Optional<Path> file) {
        files.ask(
                () -> BuiltInLessons.first(),
                lesson -> {
                    show(lesson);
                    file.ifPresent(this::open);
                },
                this::tell);
    }

    /** Opens a lesson from a file; if it can't be used, what was open stays, and says why. */
    void open(Path file) {
        files.ask(() -> LessonFiles.read(file, texts), this::show, this::tell);
    }

    private void tell(Exception what) {
        view.tell(texts.say("window.notOpened", String.valueOf(what.getMessage())));
    }

    private void acceptFiles(Scene scene) {
        scene.setOnDragOver(event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
                event.consume();
            }
        });
        scene.setOnDragDropped(event -> {
            event.getDragboard().getFiles().stream()
                    .findFirst()
                    .map(File::toPath)
                    .ifPresent(this::openOnPage);
            event.setDropCompleted(true);
            event.consume();
        });
    }

    /** Opens a file where the open page has a use for it, or else as a lesson to practise. */
    void openOnPage(Path file) {
        if (MeasuredLine.isTouchstone(file) && view != null) {
            view.show("measured");
        }
        Optional.ofNullable(view).flatMap(WindowView::files).orElse(this::open).accept(file);
    }

    /** Asks for a file and opens it. */
    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.say(view.files().isPresent() ? "window.openAny" : "window.open"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(texts.say("window.lessons"), "*.json"));
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(texts.say("measured.files"), "*.s1p", "*.s2p", "*.csv", "*.txt"));
        Optional.ofNullable(chooser.showOpenDialog(stage)).map(File::toPath).ifPresent(this::openOnPage);
    }

    private void content(Node page) {
        if (stage.getScene() == null) {
            prepareStage();
            Scene scene = new Scene(new StackPane(page));
            scene.getStylesheets().add(DesktopWindow.class.getResource(STYLE).toExternalForm());
            acceptFiles(scene);
            stage.setScene(scene);
        } else {
            ((StackPane) stage.getScene().getRoot()).getChildren().setAll(page);
        }
        stage.show();
    }

    /** Some window managers give a new window another size than it asks for; so it asks again once it stands. */
    private void askForSizeAgain(double width, double height) {
        PauseTransition standing = new PauseTransition(Duration.millis(SETTLING_MILLISECONDS));
        standing.setOnFinished(now -> {
            if (!stage.isMaximized() && (stage.getWidth() < width || stage.getHeight() < height)) {
                stage.setWidth(width);
                stage.setHeight(height);
            }
        });
        stage.setOnShown(shown -> standing.play());
    }

    private void prepareStage() {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setTitle("Cablewright");
        stage.setWidth(Math.min(WIDTH_PIXELS, screen.getWidth()));
        stage.setHeight(Math.min(HEIGHT_PIXELS, screen.getHeight()));
        stage.setMinWidth(Math.min(LEAST_WIDTH_PIXELS, screen.getWidth()));
        stage.setMinHeight(Math.min(LEAST_HEIGHT_PIXELS, screen.getHeight()));
        memory.restore(stage, model);
        askForSizeAgain(stage.getWidth(), stage.getHeight());
        useTheme(model.darkProperty().get());
        stage.setOnHiding(event -> memory.keep(stage, model));
        stage.setOnCloseRequest(event -> {
            if (!pages.mayClose(stage::hide)) {
                view.show(Pages.BENCH);
                event.consume();
            }
        });
    }

    private static void useTheme(boolean dark) {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
    }

    WindowViewModel model() {
        return model;
    }

    PracticeViewModel practice() {
        return practice;
    }

    /** The Bench, once its page was opened. */
    BenchViewModel bench() {
        return pages.opened().orElseThrow().model();
    }

    WindowView view() {
        return view;
    }
}
