// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.strip.FoldingStrip;
import cablewright.ui.words.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** The window: its bar at the top and the work beneath, light or dark, at its usual scale or the projector's. */
final class WindowView extends StackPane {

    private static final double LETTERS_FOR_THE_NAME = 88;

    private final WindowViewModel model;
    private final Texts texts;
    private final Runnable choose;
    private final Label notice = new Label();
    private final HBox noticeBar = new HBox();
    private final ChangeListener<Boolean> dark = (o, before, now) -> style("dark", now);
    private final ChangeListener<Boolean> projector = (o, before, now) -> style("projector", now);
    private final BorderPane frame = new BorderPane();
    private final PageBar pages;
    private final HelpOverlay help;
    private Runnable home = () -> {};
    private final PassingSign sign = new PassingSign();

    WindowView(WindowViewModel model, List<Page> pages, MenuButton practise, Runnable choose, Texts texts) {
        this.model = model;
        this.texts = texts;
        this.choose = choose;
        this.help = new HelpOverlay(texts, this::closeHelp);
        getStyleClass().add("window");
        buildNotice();
        this.pages = new PageBar(pages, frame, texts);
        frame.setTop(new VBox(bar(practise), noticeBar));
        getChildren().addAll(frame, sign);
        StackPane.setAlignment(sign, Pos.BOTTOM_CENTER);
        model.darkProperty().addListener(dark);
        model.projectorProperty().addListener(projector);
        style("dark", model.darkProperty().get());
        style("projector", model.projectorProperty().get());
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private void buildNotice() {
        notice.setWrapText(true);
        notice.setId("notice");
        notice.setMaxWidth(Double.MAX_VALUE);
        notice.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(notice, Priority.ALWAYS);
        Button close = iconButton("notice-close", Feather.X, () -> tell(""));
        noticeBar.getChildren().addAll(notice, close);
        noticeBar.getStyleClass().add("notice-bar");
        noticeBar.setAlignment(Pos.CENTER_LEFT);
        tell("");
    }

    /** Says something above the work, until it is closed; nothing is blocked meanwhile. */
    void tell(String sentence) {
        notice.setText(sentence);
        noticeBar.setVisible(!sentence.isEmpty());
        noticeBar.setManaged(!sentence.isEmpty());
    }

    /** Lets go of the window's model, which outlives this view when another lesson is opened. */
    void close() {
        model.darkProperty().removeListener(dark);
        model.projectorProperty().removeListener(projector);
    }

    private void style(String styleClass, boolean on) {
        getStyleClass().remove(styleClass);
        if (on) {
            getStyleClass().add(styleClass);
        }
    }

    private HBox bar(MenuButton practise) {
        Label name = new Label("Cablewright");
        name.getStyleClass().add("app-name");
        name.setMinWidth(Region.USE_PREF_SIZE);
        practise.setMinWidth(Region.USE_PREF_SIZE);
        FoldingStrip tools = new FoldingStrip(Orientation.HORIZONTAL, Pos.CENTER_RIGHT, texts.say("window.more"));
        tools.more().setId("window-more");
        HBox.setHgrow(tools, Priority.ALWAYS);
        tools.add(unitButton(), () -> List.of(item("window.unit", model::switchUnit)));
        tools.add(darkButton(), () -> List.of(item("window.theme", model::switchDark)));
        tools.add(projectorButton(), () -> List.of(item("window.projector.name", model::switchProjector)));
        tools.add(helpButton(), () -> List.of(item("window.help-button", this::openHelp)));
        tools.add(
                iconButton("full-screen", Feather.MAXIMIZE, this::fullScreen),
                () -> List.of(item("window.full-screen", this::fullScreen)));
        tools.add(iconButton("open", Feather.FOLDER, choose), () -> List.of(item("window.open", choose)));
        tools.add(copyButton(), () -> List.of(item("window.copy", this::copyPicture)));
        tools.add(practise, () -> {
            Menu menu = new Menu(practise.getText());
            menu.getItems().setAll(practise.getItems());
            return List.of(menu);
        });
        HBox bar = new HBox(name, pages, tools);
        bar.widthProperty().addListener((o, before, now) -> {
            boolean wide =
                    now.doubleValue() > LETTERS_FOR_THE_NAME * name.getFont().getSize();
            name.setVisible(wide);
            name.setManaged(wide);
        });
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("bar");
        return bar;
    }

    private MenuItem item(String words, Runnable action) {
        MenuItem item = new MenuItem(texts.say(words));
        item.setOnAction(event -> action.run());
        return item;
    }

    private void fullScreen() {
        if (getScene().getWindow() instanceof Stage stage) {
            stage.setFullScreen(!stage.isFullScreen());
        }
    }

    private Button unitButton() {
        Button unit = pill("unit", texts.say("window.unit"));
        unit.textProperty().bind(model.unitProperty().map(LengthUnit::symbol));
        unit.setOnAction(event -> model.switchUnit());
        return unit;
    }

    private Button pill(String id, String name) {
        Button pill = new Button();
        pill.setId(id);
        pill.getStyleClass().addAll("flat", "small-button");
        pill.setMinWidth(Region.USE_PREF_SIZE);
        pill.setAccessibleText(name);
        pill.setTooltip(new Tooltip(name));
        return pill;
    }

    private Button darkButton() {
        Button dark = pill("dark", texts.say("window.theme"));
        dark.graphicProperty().bind(model.darkProperty().map(on -> new FontIcon(on ? Feather.SUN : Feather.MOON)));
        dark.setOnAction(event -> model.switchDark());
        return dark;
    }

    private ToggleButton projectorButton() {
        ToggleButton projector = new ToggleButton("", new FontIcon(Feather.MONITOR));
        projector.setId("projector");
        projector.getStyleClass().addAll("flat", "small-button", "switch");
        projector.setMinWidth(Region.USE_PREF_SIZE);
        projector.setAccessibleText(texts.say("window.projector.name"));
        projector.setTooltip(new Tooltip(texts.say("window.projector.name")));
        projector.selectedProperty().bindBidirectional(model.projectorProperty());
        return projector;
    }

    private Button copyButton() {
        return iconButton("copy", Feather.CAMERA, this::copyPicture);
    }

    private Button helpButton() {
        return iconButton("help-button", Feather.HELP_CIRCLE, this::openHelp);
    }

    private Button iconButton(String id, Feather icon, Runnable action) {
        Button button = new Button("", new FontIcon(icon));
        button.setId(id);
        button.getStyleClass().addAll("flat", "small-button");
        button.setAccessibleText(texts.say("window." + id));
        button.setTooltip(new Tooltip(texts.say("window." + id)));
        button.setOnAction(event -> action.run());
        return button;
    }

    /** Keys of the window come first, so that they work wherever the focus is. */
    private void pressed(KeyEvent event) {
        boolean writing = event.getTarget() instanceof TextInputControl;
        boolean questionMark = event.getCode() == KeyCode.SLASH && event.isShiftDown() && !writing;
        if (event.getCode() == KeyCode.F1 || questionMark) {
            openHelp();
            event.consume();
        } else if (event.getCode() == KeyCode.F11) {
            fullScreen();
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && getChildren().contains(help)) {
            closeHelp();
            event.consume();
        } else if (event.isShortcutDown() && event.isShiftDown() && event.getCode() == KeyCode.C) {
            copyPicture();
            event.consume();
        } else if (event.isShortcutDown() && !event.isShiftDown()) {
            if (window(event.getCode())) {
                event.consume();
            }
        }
    }

    /** What Ctrl+H does. */
    void onHome(Runnable action) {
        home = action;
    }

    private boolean window(KeyCode code) {
        if (code.isDigitKey() && code != KeyCode.DIGIT0) {
            pages.show(code.getCode() - KeyCode.DIGIT1.getCode());
            return true;
        }
        switch (code) {
            case O:
                choose.run();
                return true;
            case H:
                home.run();
                return true;
            case U:
                model.switchUnit();
                return true;
            case L:
                model.switchDark();
                return true;
            case P:
                model.switchProjector();
                return true;
            default:
                return false;
        }
    }

    void openHelp() {
        if (!getChildren().contains(help)) {
            frame.setDisable(true);
            getChildren().add(help);
            help.start();
        }
    }

    private void closeHelp() {
        frame.setDisable(false);
        getChildren().remove(help);
        start();
    }

    /** Puts a picture of the three tracks, or of what else is open, onto the clipboard. */
    void copyPicture() {
        SnapshotParameters parameters = new SnapshotParameters();
        WritableImage picture = pages.content().picture().snapshot(parameters, null);
        ClipboardContent content = new ClipboardContent();
        content.putImage(picture);
        Clipboard.getSystemClipboard().setContent(content);
        sign.show(texts.say("window.copied"));
    }

    /** What becomes of a file while the open page has a use of its own for files. */
    Optional<Consumer<Path>> files() {
        return pages.content().files();
    }

    /** Opens a page by its name. */
    void show(String id) {
        pages.show(id);
    }

    void start() {
        pages.content().start();
    }
}
