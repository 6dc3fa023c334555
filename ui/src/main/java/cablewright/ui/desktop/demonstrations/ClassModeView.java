// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.strip.ScrollToFocus;
import cablewright.ui.words.LengthUnit;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A demonstration before a class: large, question first, the room's answers counted, then the figure with its sliders. */
final class ClassModeView extends BorderPane {

    private static final PseudoClass REVEALED = PseudoClass.getPseudoClass("revealed");
    private static final double ROOMY_LETTERS = 44;
    private static final double MOST_BAR_LETTERS = 14;

    private final ClassSession session;
    private final Texts words;
    private final Texts screen;
    private final ObservableValue<LengthUnit> unit;
    private final Runnable leave;
    private final Button next = new Button();

    ClassModeView(ClassSession session, Texts words, Texts screen, ObservableValue<LengthUnit> unit, Runnable leave) {
        this.session = session;
        this.words = words;
        this.screen = screen;
        this.unit = unit;
        this.leave = leave;
        setId("class-mode");
        getStyleClass().add("class-mode");
        next.setId("class-next");
        next.getStyleClass().addAll("accent", "main-button");
        next.setMinWidth(Region.USE_PREF_SIZE);
        next.setOnAction(event -> session.goOn());
        session.indexProperty().addListener(changed -> show());
        session.revealedProperty().addListener(changed -> show());
        session.votesProperty().addListener(changed -> showCounts());
        // Before the button that has the focus: Space goes on, wherever it is.
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        show();
    }

    private void pressed(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        KeyCode key = event.getCode();
        if (key == KeyCode.SPACE) {
            session.goOn();
            event.consume();
        } else if (key == KeyCode.ESCAPE) {
            leave.run();
            event.consume();
        } else if (key.isDigitKey() && key != KeyCode.DIGIT0) {
            session.count(key.getCode() - KeyCode.DIGIT1.getCode(), event.isShiftDown() ? -1 : 1);
            event.consume();
        }
    }

    private String id() {
        return session.model().demonstration().id();
    }

    private boolean isRevealed() {
        return session.revealedProperty().get();
    }

    private Label text(String said, String styleClass) {
        Label label = new Label(said);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(styleClass);
        return label;
    }

    private void show() {
        pseudoClassStateChanged(REVEALED, isRevealed());
        next.setText(screen.say(isRevealed() ? "class.next" : "class.reveal"));
        next.setAccessibleText(next.getText());
        VBox head = new VBox(text(words.say(id() + ".question"), "class-question"));
        head.getStyleClass().add("class-head");
        if (isRevealed()) {
            head.getChildren().addAll(results(), text(words.say(id() + ".because"), "because"));
            setCenter(lab());
        } else {
            setCenter(answers());
        }
        setTop(head);
        setBottom(foot());
        next.requestFocus();
    }

    private HBox foot() {
        Label hint = text(screen.say(isRevealed() ? "class.keys.revealed" : "class.keys"), "quiet");
        HBox.setHgrow(hint, Priority.ALWAYS);
        hint.setMaxWidth(Double.MAX_VALUE);
        Button out = new Button(screen.say("class.leave"));
        out.setId("class-leave");
        out.setMinWidth(Region.USE_PREF_SIZE);
        out.setAccessibleText(screen.say("class.leave"));
        out.setOnAction(event -> leave.run());
        HBox foot = new HBox(hint, out, next);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("class-foot");
        return foot;
    }

    /** Every answer with its number, its count and the two buttons that count. */
    private Node answers() {
        VBox rows = new VBox();
        rows.getStyleClass().add("class-answers");
        for (int i = 0; i < session.model().demonstration().answers(); i++) {
            int answer = i;
            Label number = text(Integer.toString(i + 1), "class-number");
            number.setMinWidth(Region.USE_PREF_SIZE);
            Label said = text(words.say(id() + ".answer." + i), "class-answer");
            HBox.setHgrow(said, Priority.ALWAYS);
            said.setMaxWidth(Double.MAX_VALUE);
            HBox row = new HBox(number, said, count(answer, -1), counted(answer), count(answer, 1));
            row.setAlignment(Pos.CENTER_LEFT);
            row.getStyleClass().addAll("card", "class-row");
            rows.getChildren().add(row);
        }
        ScrollPane scroll = ScrollToFocus.on(new ScrollPane(rows));
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setAccessibleText(words.say(id() + ".question"));
        scroll.getStyleClass().add("left-scroll");
        return scroll;
    }

    private Label counted(int answer) {
        Label counted = new Label(Integer.toString(session.countOf(answer)));
        counted.setId("count-" + answer);
        counted.getStyleClass().add("class-count");
        counted.setMinWidth(Region.USE_PREF_SIZE);
        return counted;
    }

    private Button count(int answer, int more) {
        Button button = new Button(more > 0 ? "+" : "−");
        button.setId((more > 0 ? "more-" : "fewer-") + answer);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setAccessibleText(screen.say(more > 0 ? "class.more" : "class.fewer", answer + 1));
        button.setOnAction(event -> session.count(answer, more));
        return button;
    }

    private void showCounts() {
        for (int i = 0; i < session.model().demonstration().answers(); i++) {
            if (lookup("#count-" + i) instanceof Label counted) {
                counted.setText(Integer.toString(session.countOf(i)));
            }
        }
    }

    /** What the room said, as bars, with the right answer marked by a sign as well as by its colour. */
    private VBox results() {
        VBox results = new VBox();
        results.getStyleClass().add("class-results");
        int right = session.model().demonstration().rightAnswer();
        int most = 1;
        for (int i = 0; i < session.model().demonstration().answers(); i++) {
            most = Math.max(most, session.countOf(i));
        }
        for (int i = 0; i < session.model().demonstration().answers(); i++) {
            boolean isRight = i == right;
            if (session.countOf(i) == 0 && !isRight) {
                continue;
            }
            Region bar = new Region();
            bar.getStyleClass().add(isRight ? "class-bar-right" : "class-bar");
            double share = (double) session.countOf(i) / most;
            Label said = text(
                    screen.say(isRight ? "class.right" : "class.wrong", words.say(id() + ".answer." + i)),
                    isRight ? "outcome-right" : "class-said");
            bar.prefWidthProperty().bind(said.fontProperty().map(font -> share * MOST_BAR_LETTERS * font.getSize()));
            bar.minWidthProperty().bind(bar.prefWidthProperty());
            Label counted = counted(i);
            HBox.setHgrow(said, Priority.ALWAYS);
            said.setMaxWidth(Double.MAX_VALUE);
            HBox row = new HBox(counted, bar, said);
            row.setAlignment(Pos.CENTER_LEFT);
            row.getStyleClass().add("class-result");
            results.getChildren().add(row);
        }
        return results;
    }

    private BorderPane lab() {
        DemonstrationViewModel model = session.model();
        FigureView figure = new FigureView(model::click);
        model.figureProperty().get().ifPresent(figure::show);
        Label caption =
                text(model.figureProperty().get().map(it -> it.caption()).orElse(""), "caption");
        model.figureProperty()
                .addListener((o, before, now) -> now.ifPresent(it -> {
                    figure.show(it);
                    caption.setText(it.caption());
                }));
        // In a low window the figure has the room, and the caption is left to screen readers, to whom the figure says
        // it.
        BooleanBinding roomy = Bindings.createBooleanBinding(
                () -> getHeight() > ROOMY_LETTERS * caption.getFont().getSize(),
                heightProperty(),
                caption.fontProperty());
        caption.visibleProperty().bind(roomy);
        caption.managedProperty().bind(roomy);
        VBox.setVgrow(figure, Priority.ALWAYS);
        VBox card = new VBox(figure, caption);
        card.getStyleClass().addAll("card", "figure-card");
        ScrollPane controls = ScrollToFocus.on(new ScrollPane(new ControlShelf(model, words, unit)));
        controls.setFitToWidth(true);
        controls.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        controls.setFocusTraversable(false);
        controls.setAccessibleText(screen.say("controls.name"));
        controls.getStyleClass().add("flag-scroll");
        BorderPane lab = new BorderPane(new StackPane(card));
        lab.setRight(controls);
        lab.getStyleClass().add("lab");
        return lab;
    }

    /** Puts the focus on what goes on. */
    void start() {
        next.requestFocus();
    }
}
