// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.home;

import cablewright.lessons.classbook.WeakKind;
import cablewright.lessons.practice.PracticeSession.Mode;
import cablewright.lessons.text.Texts;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The lesson home: who is there, where to go on, ten minutes for today, and the lessons. Big, few, clear. */
public final class HomeView extends ScrollPane {

    private static final int MOST_NAMED = 3;

    private final HomeViewModel model;
    private final HomeActions actions;
    private final Texts texts;
    private final Words words;
    private final VBox page = new VBox();
    private final VBox body = new VBox();
    private final Label title = new Label();
    private final TextField name = new TextField();
    private Optional<Button> first = Optional.empty();

    /**
     * Shows a home.
     *
     * @param model the home
     * @param actions what it can set off
     * @param texts texts of the desktop
     */
    public HomeView(HomeViewModel model, HomeActions actions, Texts texts) {
        this.model = model;
        this.actions = actions;
        this.texts = texts;
        this.words = Words.in(LengthUnit.METRES, texts.locale());
        setId("home");
        setAccessibleText(texts.say("home.name"));
        getStyleClass().addAll("flag-scroll", "home-scroll");
        setFitToWidth(true);
        setFocusTraversable(false);
        page.getStyleClass().add("home");
        body.getStyleClass().add("home-body");
        body.spacingProperty().bind(page.spacingProperty());
        page.getChildren().addAll(head(), body);
        setContent(page);
        model.stateProperty().addListener((o, before, now) -> show());
        show();
    }

    private HBox head() {
        title.getStyleClass().add("home-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        name.setId("home-name");
        name.setPrefColumnCount(14);
        name.setAccessibleText(texts.say("home.who.name"));
        name.setText(model.traineeProperty().get());
        name.setOnAction(event -> named());
        name.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                named();
            }
        });
        Label asked = new Label(texts.say("home.who"));
        asked.setLabelFor(name);
        asked.setMinWidth(Region.USE_PREF_SIZE);
        HBox head = new HBox(title, space, asked, name);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("home-head");
        return head;
    }

    private void named() {
        String typed = name.getText().strip();
        if (!typed.isEmpty() && !typed.equals(model.traineeProperty().get())) {
            model.traineeProperty().set(typed);
            model.load();
        }
    }

    private void show() {
        Optional<HomeState> state = model.stateProperty().get();
        boolean back = state.filter(
                        it -> it.entries().stream().anyMatch(e -> e.progress().isBegun())
                                || it.goOn().filter(HomeState.GoOn::begun).isPresent())
                .isPresent();
        title.setText(back ? texts.say("home.welcomeBack", model.whose()) : texts.say("home.welcome"));
        boolean hadFocus = first.map(Node::isFocused).orElse(true);
        body.getChildren().clear();
        first = Optional.empty();
        if (state.isEmpty()) {
            Label reading = new Label(texts.say("home.reading"));
            reading.getStyleClass().add("quiet");
            body.getChildren().add(reading);
            return;
        }
        GridPane cards = grid();
        state.get().goOn().ifPresent(it -> cards.add(goOn(it), 0, 0));
        cards.add(today(state.get()), cards.getChildren().size(), 0);
        Label lessons = new Label(texts.say("home.lessons"));
        lessons.getStyleClass().add("home-section");
        body.getChildren().addAll(cards, lessons, lessons(state.get()));
        state.get().faults().forEach(fault -> {
            Label said = new Label(fault);
            said.setWrapText(true);
            said.getStyleClass().add("quiet");
            body.getChildren().add(said);
        });
        body.getChildren().add(links());
        if (hadFocus && getScene() != null && !name.isFocused()) {
            focus();
        }
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("home-grid");
        ColumnConstraints half = new ColumnConstraints();
        half.setPercentWidth(50);
        half.setFillWidth(true);
        grid.getColumnConstraints().addAll(half, half);
        return grid;
    }

    private VBox card(String small, String large, String quiet, Node... below) {
        Label over = new Label(small);
        over.getStyleClass().add("quiet");
        Label head = new Label(large);
        head.getStyleClass().add("home-card-title");
        head.setWrapText(true);
        head.setMinHeight(Region.USE_PREF_SIZE);
        Label about = new Label(quiet);
        about.getStyleClass().add("quiet");
        about.setWrapText(true);
        about.setMinHeight(Region.USE_PREF_SIZE);
        about.setId(below[0].getId() + "-where");
        VBox card = new VBox(over, head, about);
        card.getChildren().addAll(below);
        card.getStyleClass().addAll("card", "home-card");
        card.setMaxHeight(Double.MAX_VALUE);
        return card;
    }

    private VBox goOn(HomeState.GoOn goOn) {
        String word = texts.say(goOn.begun() ? "home.goOn" : "home.start");
        Button button = new Button(word);
        button.setId("go-on");
        button.getStyleClass().addAll("accent", "main-button");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setAccessibleText(word + ": " + goOn.exercise().title());
        button.setOnAction(
                event -> actions.open(goOn.entry(), Optional.of(goOn.exercise().id())));
        first = Optional.of(button);
        String where = texts.say(
                "home.where",
                goOn.number(),
                goOn.entry().progress().lesson().exercises().size(),
                goOn.flags());
        return card(
                word + " · " + goOn.entry().progress().lesson().title(),
                goOn.exercise().title(),
                where,
                button);
    }

    private VBox today(HomeState state) {
        String weak = state.weak().stream()
                .limit(MOST_NAMED)
                .map(WeakKind::kind)
                .map(words::kind)
                .collect(Collectors.joining(", "));
        String about = (weak.isEmpty() ? texts.say("home.today.none") : texts.say("home.today.weak", weak)) + " · "
                + texts.say("home.today.due", state.reviewsDue());
        Button start = new Button(texts.say("home.today.start"));
        start.setId("today");
        start.getStyleClass().add("main-button");
        start.setMinWidth(Region.USE_PREF_SIZE);
        start.setAccessibleText(texts.say("home.today.start.name"));
        start.setOnAction(event -> actions.today());
        if (first.isEmpty()) {
            first = Optional.of(start);
        }
        HBox row = new HBox(start);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setId("today-links");
        row.getStyleClass().add("home-links");
        row.getChildren().add(link("home.timed", () -> actions.practise(Mode.TIMED)));
        row.getChildren().add(link("home.free", () -> actions.practise(Mode.UNTIMED)));
        if (state.reviewsDue() > 0) {
            row.getChildren().add(link("home.review", () -> actions.practise(Mode.REVIEW)));
        }
        return card(texts.say("home.today"), texts.say("home.today.title"), about, row);
    }

    private Hyperlink link(String key, Runnable action) {
        Hyperlink link = new Hyperlink(texts.say(key));
        link.setId(key.replace('.', '-'));
        link.setMinWidth(Region.USE_PREF_SIZE);
        link.setOnAction(event -> action.run());
        return link;
    }

    private GridPane lessons(HomeState state) {
        GridPane grid = grid();
        List<HomeState.Entry> entries = state.entries();
        for (int i = 0; i < entries.size(); i++) {
            HomeState.Entry entry = entries.get(i);
            grid.add(
                    new LessonRow(entry, after(entry, entries), () -> actions.open(entry, Optional.empty()), texts),
                    i % 2,
                    i / 2);
        }
        return grid;
    }

    /** The number, in this list, of the lesson to pass first. */
    private static String after(HomeState.Entry entry, List<HomeState.Entry> entries) {
        List<String> titles =
                entries.stream().map(each -> each.progress().lesson().title()).toList();
        return entry.progress().waitsFor().stream()
                .findFirst()
                .map(title -> String.valueOf(titles.indexOf(title) + 1))
                .orElse("");
    }

    private FlowPane links() {
        FlowPane links = new FlowPane(link("home.file", actions::chooseFile), link("home.bench", actions::bench));
        links.getStyleClass().add("home-links");
        links.setHgap(16);
        return links;
    }

    private void focus() {
        first.ifPresent(Node::requestFocus);
    }

    /** Reads what is kept, and puts the focus on what to go on with. */
    public void start() {
        model.load();
        focus();
    }
}
