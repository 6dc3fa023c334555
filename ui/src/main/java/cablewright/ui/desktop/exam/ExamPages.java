// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam;

import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Form;
import cablewright.ui.desktop.exam.key.KeyView;
import cablewright.ui.desktop.exam.key.KeyViewModel;
import cablewright.ui.desktop.exam.marking.MarkingView;
import cablewright.ui.desktop.exam.marking.MarkingViewModel;
import cablewright.ui.desktop.exam.paper.SealView;
import cablewright.ui.desktop.exam.paper.SealViewModel;
import cablewright.ui.desktop.exam.sitting.SittingView;
import cablewright.ui.desktop.exam.sitting.SittingViewModel;
import cablewright.ui.desktop.exam.sitting.StartView;
import cablewright.ui.desktop.exam.sitting.StartViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/**
 * The Class book and the pages of exams, one at a time. While an exam is sat it has the room of all of them; what was begun on a
 * page stays while another is shown.
 */
public final class ExamPages extends BorderPane {

    private static final String STYLE = "exam.css";

    private final Texts texts;
    private final Texts desktop;
    private final Threads threads;
    private final ObservableValue<LengthUnit> unit;
    private final Map<String, Page> pages = new LinkedHashMap<>();
    private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();
    private final HBox bar = new HBox();
    private final StartViewModel start;
    private Optional<SittingView> sitting = Optional.empty();
    private Page open;

    /** One page: what it shows, and what puts the focus into it. */
    private record Page(Node node, Runnable start) {}

    /**
     * Makes the pages around the Class book.
     *
     * @param classBook the Class book
     * @param startClassBook puts the focus into it
     * @param lesson the lesson that is open in the window
     * @param traineeName name under which this user's attempts are kept
     * @param unit the unit of lengths
     * @param records where records go
     * @param threads where to work and where to show
     * @param desktop texts of the desktop
     */
    public ExamPages(
            Node classBook,
            Runnable startClassBook,
            Supplier<Lesson> lesson,
            StringProperty traineeName,
            ObservableValue<LengthUnit> unit,
            ClassRecords records,
            Threads threads,
            Texts desktop) {
        this.texts = desktop.sibling(Form.BUNDLE);
        this.desktop = desktop;
        this.threads = threads;
        this.unit = unit;
        getStylesheets().add(ExamPages.class.getResource(STYLE).toExternalForm());
        getStyleClass().add("exams");
        Words words = Words.in(unit.getValue(), desktop.locale());
        KeyViewModel keys = new KeyViewModel(threads, texts, Clock.systemUTC());
        SealViewModel seal = new SealViewModel(threads, texts);
        keys.keyProperty().addListener((o, before, now) -> now.map(ExaminerKey::publicKey)
                .ifPresent(seal.publicKeyProperty()::set));
        start = new StartViewModel(threads, texts, Clock.systemUTC(), System::nanoTime, this::sit);
        if (!traineeName.get().strip().equalsIgnoreCase(desktop.say("trainee"))) {
            start.traineeProperty().set(traineeName.get());
        }
        MarkingViewModel marking = new MarkingViewModel(keys.keyFileProperty(), records, threads, texts);
        StartView startView = new StartView(start, texts);
        SealView sealView = new SealView(seal, lesson, () -> words.with(unit.getValue()), texts);
        MarkingView markingView = new MarkingView(marking, unit, texts, words);
        KeyView keyView = new KeyView(keys, texts, words);
        page("attempts", classBook, startClassBook);
        page("sit", startView, startView::start);
        page("seal", sealView, sealView::start);
        page("mark", markingView, markingView::start);
        page("keys", keyView, keyView::start);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("exam-bar");
        show("attempts");
    }

    private void page(String name, Node node, Runnable toStart) {
        pages.put(name, new Page(node, toStart));
        ToggleButton button = new ToggleButton(texts.say("pages." + name));
        button.setId("exam-page-" + name);
        button.getStyleClass().add("page-tab");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setAccessibleText(texts.say("pages." + name + ".name"));
        button.setOnAction(event -> {
            show(name);
            start();
        });
        buttons.put(name, button);
        bar.getChildren().add(button);
        if (buttons.size() == 1) {
            button.setToggleGroup(new ToggleGroup());
        } else {
            button.setToggleGroup(buttons.values().iterator().next().getToggleGroup());
        }
    }

    /**
     * Opens a page.
     *
     * @param name attempts, sit, seal, mark or keys
     */
    public void show(String name) {
        open = pages.get(name);
        buttons.get(name).setSelected(true);
        sitting.ifPresentOrElse(this::showSitting, () -> {
            setTop(bar);
            setCenter(open.node());
        });
    }

    private void showSitting(SittingView view) {
        setTop(null);
        setCenter(view);
    }

    private void sit(StartViewModel.Begun begun) {
        SittingViewModel model = new SittingViewModel(begun.sitting(), begun.target(), unit, threads, texts, desktop);
        sitting = Optional.of(
                new SittingView(model, this::leave, texts, desktop, Words.in(unit.getValue(), desktop.locale())));
        show("sit");
        applyCss();
        start();
    }

    private void leave() {
        sitting.ifPresent(SittingView::stop);
        sitting = Optional.empty();
        show("sit");
        start.openPaper();
    }

    /** Puts the focus where work begins. */
    public void start() {
        applyCss();
        sitting.ifPresentOrElse(SittingView::start, () -> open.start().run());
    }

    /**
     * Returns what a picture of the work shows.
     *
     * @return the open page
     */
    public Node picture() {
        return sitting.map(SittingView::picture).orElse(open.node());
    }
}
