// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.demonstrations;

import cablewright.lessons.text.Texts;
import cablewright.ui.demonstrations.Demonstration;
import cablewright.ui.demonstrations.Demonstrations;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** The screen of demonstrations: a list of them at the left, the chosen one beside it. */
public final class DemonstrationsView extends BorderPane {

    private static final String BUNDLE = "cablewright.ui.desktop.demonstrations.screen";
    private static final String STYLE = "demonstrations.css";

    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final double LEAST_EMS_FOR_TITLES = 75;

    private final ObservableValue<LengthUnit> unit;
    private final ScrollPane left;
    private Button classButton;
    private final Texts screen;
    private final Texts words;
    private final ToggleGroup group = new ToggleGroup();
    private final List<DemonstrationViewModel> models = new ArrayList<>();
    private final List<DemonstrationView> views = new ArrayList<>();

    /**
     * Makes the screen.
     *
     * @param unit the unit of lengths
     * @param threads where to compute
     * @param locale the language
     */
    public DemonstrationsView(ObservableValue<LengthUnit> unit, Threads threads, Locale locale) {
        this.unit = unit;
        screen = new Texts(BUNDLE, locale);
        words = new Texts(Demonstrations.BUNDLE, locale);
        getStyleClass().add("demonstrations");
        getStylesheets().add(DemonstrationsView.class.getResource(STYLE).toExternalForm());
        VBox list = new VBox();
        list.getStyleClass().addAll("card", "demonstration-list");
        Label title = new Label(screen.say("list.title"));
        title.getStyleClass().add("list-title");
        list.getChildren().addAll(title, classButton());
        for (Demonstration demonstration : Demonstrations.all()) {
            DemonstrationViewModel model = new DemonstrationViewModel(demonstration, unit, threads, locale);
            models.add(model);
            views.add(new DemonstrationView(model, words, screen, unit));
            list.getChildren().add(entry(models.size(), demonstration));
        }
        widthProperty().addListener(changed -> fit(title));
        title.fontProperty().addListener(changed -> fit(title));
        group.selectedToggleProperty().addListener((o, before, now) -> choose(before, now));
        group.selectToggle(group.getToggles().get(0));
        left = scrolling(list);
        setLeft(left);
    }

    /** Where there is little room for such large letters the list shows numbers alone, and leaves the room to the figure. */
    private void fit(Label title) {
        boolean narrow = getWidth() < LEAST_EMS_FOR_TITLES * title.getFont().getSize();
        pseudoClassStateChanged(NARROW, narrow);
        title.setVisible(!narrow);
        title.setManaged(!narrow);
        classButton.setText(narrow ? "" : screen.say("class.open"));
        for (Toggle toggle : group.getToggles()) {
            ToggleButton entry = (ToggleButton) toggle;
            int number = (int) entry.getUserData() + 1;
            entry.setText(narrow ? Integer.toString(number) : screen.say("list.entry", number, titleOf(number - 1)));
        }
    }

    private Button classButton() {
        Button button = new Button();
        button.setId("class-mode-open");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAccessibleText(screen.say("class.open.name"));
        button.setTooltip(new Tooltip(screen.say("class.open.name")));
        button.setGraphic(new FontIcon(Feather.USERS));
        button.setOnAction(event -> openClass());
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.F5) {
                openClass();
                event.consume();
            }
        });
        classButton = button;
        return button;
    }

    /** Shows the chosen demonstration, and those after it, to a class: the whole screen, the question first. */
    void openClass() {
        int first = (int) group.getSelectedToggle().getUserData();
        ClassModeView shown =
                new ClassModeView(new ClassSession(models, first), words, screen, unit, () -> closeClass());
        setLeft(null);
        setCenter(shown);
        fullScreen(true);
        shown.start();
    }

    private void closeClass() {
        setLeft(left);
        choose(group.getSelectedToggle(), group.getSelectedToggle());
        fullScreen(false);
        start();
    }

    private void fullScreen(boolean whole) {
        if (getScene() != null && getScene().getWindow() instanceof Stage stage) {
            stage.setFullScreenExitHint("");
            stage.setFullScreen(whole);
        }
    }

    private String titleOf(int index) {
        return words.say(models.get(index).demonstration().id() + ".title");
    }

    private static ScrollPane scrolling(Node content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setFitToHeight(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.getStyleClass().add("left-scroll");
        pane.setFocusTraversable(false);
        return pane;
    }

    private ToggleButton entry(int number, Demonstration demonstration) {
        String title = words.say(demonstration.id() + ".title");
        ToggleButton entry = new ToggleButton(screen.say("list.entry", number, title));
        entry.setId("demonstration-" + demonstration.id());
        entry.setToggleGroup(group);
        entry.setWrapText(true);
        entry.setMaxWidth(Double.MAX_VALUE);
        entry.setUserData(number - 1);
        entry.setAccessibleText(screen.say("list.entry.name", number, title));
        entry.setTooltip(new Tooltip(title));
        entry.getStyleClass().add("demonstration-entry");
        entry.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.UP) {
                step(entry, event.getCode() == KeyCode.DOWN ? 1 : -1);
                event.consume();
            }
        });
        return entry;
    }

    private void step(ToggleButton from, int way) {
        int next = group.getToggles().indexOf(from) + way;
        if (next >= 0 && next < group.getToggles().size()) {
            ToggleButton to = (ToggleButton) group.getToggles().get(next);
            group.selectToggle(to);
            to.requestFocus();
        }
    }

    /** A second press on the chosen one leaves it chosen. */
    private void choose(Toggle before, Toggle now) {
        if (now == null) {
            group.selectToggle(before);
        } else {
            ScrollPane pane = scrolling(views.get((int) now.getUserData()));
            pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.AS_NEEDED);
            setCenter(pane);
        }
    }

    /**
     * Shows a demonstration.
     *
     * @param id its name
     */
    public void show(String id) {
        for (int i = 0; i < models.size(); i++) {
            if (models.get(i).demonstration().id().equals(id)) {
                group.selectToggle(group.getToggles().get(i));
            }
        }
    }

    /** Puts the focus where work begins. */
    public void start() {
        ((ToggleButton) group.getSelectedToggle()).requestFocus();
    }

    DemonstrationViewModel model(String id) {
        return models.stream()
                .filter(model -> model.demonstration().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    DemonstrationView view(String id) {
        return views.get(models.indexOf(model(id)));
    }
}
