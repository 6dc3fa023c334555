// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.content.BuiltInLessons;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.generation.ExerciseFamily;
import cablewright.lessons.generation.GenerationRequest;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.practice.PracticeLesson;
import cablewright.lessons.practice.PracticeSession;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.model.BenchStore;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.home.HomeActions;
import cablewright.ui.desktop.home.HomeState;
import cablewright.ui.desktop.home.HomeStore;
import cablewright.ui.desktop.home.HomeView;
import cablewright.ui.desktop.home.HomeViewModel;
import cablewright.ui.desktop.home.WorkKeeper;
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
import java.util.concurrent.Callable;
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
    private final HomeStore homeStore;
    private final WorkKeeper keeper;
    private Optional<Path> lessonFile = Optional.empty();

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
        this(stage, memory, threads, records, benchStore, HomeStore.inMemory(), locale);
    }

    DesktopWindow(
            Stage stage,
            WindowMemory memory,
            Threads threads,
            ClassRecords records,
            BenchStore benchStore,
            HomeStore homeStore,
            Locale locale) {
        this.texts = new Texts(BUNDLE, locale);
        this.stage = stage;
        this.memory = memory;
        this.records = records;
        this.sittings = new PracticeStarter(records, texts, Clock.systemUTC());
        this.threads = threads;
        this.files = new LatestRun(threads);
        this.pages = new Pages(model, threads, records, benchStore, texts, this::round);
        this.homeStore = homeStore;
        this.keeper = new WorkKeeper(homeStore.work(), threads, what -> tell(texts.say("home.notKept", what)));
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
        lessonFile = Optional.empty();
        show(lesson, Optional.empty());
    }

    private void show(Lesson lesson, Optional<PracticeSession> session) {
        keeper.flush();
        practice = new PracticeViewModel(
                lesson,
                session,
                sheet -> keep(sheet, lesson, session),
                model.unitProperty(),
                threads,
                texts,
                Clock.systemUTC());
        if (session.isEmpty()) {
            String trainee = trainee();
            homeStore.work().read(trainee).ifPresent(practice::resume);
            keeper.follow(practice, trainee, lessonFile);
        }
        showPractice();
    }

    private void showPractice() {
        Lesson lesson = practice.lesson();
        Words words = Words.in(model.unitProperty().get(), texts.locale());
        PracticeView shown = new PracticeView(practice, texts, words);
        show(pages.with(pages.content(shown, shown::start, shown::tracks), lesson), lesson.title());
    }

    private void show(List<Page> shown, String title) {
        Optional.ofNullable(view).ifPresent(WindowView::close);
        view = new WindowView(
                model, shown, new PractiseMenu(title, texts, this::practise, this::showHome), this::choose, texts);
        content(view);
        view.onHome(this::showHome);
        view.start();
    }

    /** Shows the lesson home, in place of what was shown. What was begun is kept. */
    void showHome() {
        keeper.flush();
        HomeViewModel home = new HomeViewModel(
                records,
                homeStore.work(),
                homeStore.lessons(),
                model.traineeProperty(),
                texts.say("trainee"),
                threads,
                Clock.systemUTC());
        HomeView shown = new HomeView(home, homeActions(), texts);
        Lesson usual =
                Optional.ofNullable(practice).map(PracticeViewModel::lesson).orElseGet(BuiltInLessons::first);
        show(pages.with(pages.content(shown, shown::start, () -> shown), usual), texts.say("home.menu"));
    }

    private HomeActions homeActions() {
        return new HomeActions() {
            @Override
            public void open(HomeState.Entry entry, Optional<String> exerciseId) {
                lessonFile = entry.file();
                show(entry.progress().lesson(), Optional.empty());
                exerciseId.ifPresent(practice::select);
            }

            @Override
            public void today() {
                start(() -> sittings.today(trainee()));
            }

            @Override
            public void practise(PracticeSession.Mode mode) {
                DesktopWindow.this.practise(new PractiseMenu.Wish(mode, List.of(ExerciseFamily.values())));
            }

            @Override
            public void chooseFile() {
                choose();
            }

            @Override
            public void bench() {
                view.show(Pages.BENCH);
            }
        };
    }

    /** Starts ten exercises of which seven are about one kind. */
    private void round(EventKind kind) {
        start(() -> sittings.round(kind, trainee()));
    }

    private void start(Callable<Optional<PracticeStarter.Sitting>> sitting) {
        files.ask(
                sitting,
                begun -> begun.ifPresentOrElse(
                        it -> show(it.lesson(), Optional.of(it.session())),
                        () -> view.tell(texts.say("practise.nothingDue"))),
                this::tell);
    }

    /** Starts a practice session, in place of what was shown; where nothing is due, says so. */
    void practise(PractiseMenu.Wish wish) {
        String trainee = trainee();
        Optional<Lesson> opened = Optional.ofNullable(practice).map(PracticeViewModel::lesson);
        start(() -> sittings.start(wish, trainee, opened));
    }

    private String trainee() {
        String name = model.traineeProperty().get().strip();
        String usual = texts.say("trainee");
        return name.isEmpty() ? usual : name.substring(0, Math.min(MOST_NAME, name.length()));
    }

    private AttemptRecord twin(MarkSheet sheet, GenerationRequest request, Instant now) {
        return AttemptRecord.of(sheet, PracticeLesson.ID, now).by(trainee()).madeOf(request);
    }

    /** Lets the sitting learn from an attempt, and keeps it in the trainee's log. */
    private void keep(MarkSheet sheet, Lesson lesson, Optional<PracticeSession> session) {
        Instant now = Clock.systemUTC().instant();
        AttemptRecord first = session.map(sitting -> sitting.record(sheet, now))
                .orElseGet(() -> AttemptRecord.of(sheet, lesson, now))
                .by(trainee());
        AttemptRecord record = practice.twinRequest(sheet.exerciseId())
                .map(request -> twin(sheet, request, now))
                .orElse(first);
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
        files.ask(
                () -> LessonFiles.read(file, texts),
                lesson -> {
                    lessonFile = Optional.of(file.toAbsolutePath());
                    show(lesson, Optional.empty());
                },
                this::tell);
    }

    private void tell(Exception what) {
        tell(texts.say("window.notOpened", String.valueOf(what.getMessage())));
    }

    private void tell(String sentence) {
        Optional.ofNullable(view).ifPresent(it -> it.tell(sentence));
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
        stage.setOnHiding(event -> {
            keeper.flush();
            memory.keep(stage, model);
        });
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

    Texts texts() {
        return texts;
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
