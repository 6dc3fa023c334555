// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.measured;

import cablewright.lessons.text.Texts;
import cablewright.simulator.reading.CandidateEvent;
import cablewright.ui.desktop.practice.KnownLength;
import cablewright.ui.desktop.practice.ReadingTools;
import cablewright.ui.desktop.practice.SettingsShelf;
import cablewright.ui.desktop.practice.model.Setting;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import cablewright.ui.desktop.track.AxisKeys;
import cablewright.ui.desktop.track.TraceRoom;
import cablewright.ui.desktop.track.TraceTrack;
import cablewright.ui.desktop.track.TrackPointer;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** A measured line on the screen: its file, its trace, the settings that the file supports, and candidate events. */
public final class MeasuredView extends BorderPane {

    private final MeasuredViewModel model;
    private final Texts texts;
    private final Words words;
    private final TraceTrack trace;
    private final StackPane card;
    private final VBox left;
    private final Button open;

    /**
     * Lays the page out.
     *
     * @param model the line being read
     * @param texts texts of the desktop
     * @param words names of ends and quantities
     */
    public MeasuredView(MeasuredViewModel model, Texts texts, Words words) {
        this.model = model;
        this.texts = texts;
        this.words = words;
        getStyleClass().add("exercise");
        trace = new TraceTrack(model.traceTrack(), texts.say("trace.caption"), texts.say("trace.name"));
        TrackPointer.on(trace);
        TraceRoom.keep(this, trace);
        card = new StackPane(trace);
        card.getStyleClass().addAll("card", "track-card");
        VBox.setVgrow(card, Priority.ALWAYS);
        open = new Button(texts.say("measured.open"));
        open.setId("open-measured");
        open.getStyleClass().add("accent");
        open.setAccessibleText(texts.say("measured.open"));
        open.setOnAction(event -> choose());
        left = new VBox();
        left.getStyleClass().add("left-column");
        setCenter(left);
        setRight(candidates());
        model.settingsProperty().addListener((o, before, now) -> layOut());
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        layOut();
    }

    private Label description() {
        Label description = new Label();
        description.setId("measured-description");
        description.setWrapText(true);
        description.setMinHeight(Region.USE_PREF_SIZE);
        description
                .textProperty()
                .bind(model.toldProperty().map(text -> text.isEmpty() ? texts.say("measured.none") : text));
        return description;
    }

    private void layOut() {
        VBox head = new VBox(description(), open);
        head.setSpacing(8);
        head.getStyleClass().addAll("card", "shelf");
        Optional<SettingsViewModel> set = model.settingsProperty().get();
        trace.setVisible(set.isPresent());
        card.getChildren().setAll(trace);
        left.getChildren().setAll(head, card);
        set.ifPresentOrElse(settings -> left.getChildren().add(shelf(settings)), () -> left.getChildren()
                .add(problem()));
        if (set.isPresent()) {
            trace.requestFocus();
        }
    }

    private SettingsShelf shelf(SettingsViewModel settings) {
        ReadingTools tools = new ReadingTools(
                model.traceTrack().aids(),
                model.hasBothEnds() ? Optional.of(model::toggleOtherEnd) : Optional.empty(),
                texts);
        SettingsShelf shelf = new SettingsShelf(
                settings, model.axis(), model.workingProperty(), model.problemProperty(), tools, texts, words);
        shelf.layOver(card, new KnownLength(model.traceTrack().aids(), settings, model.axis(), texts));
        return shelf;
    }

    private Label problem() {
        Label problem = new Label();
        problem.getStyleClass().add("problem");
        problem.setWrapText(true);
        problem.textProperty().bind(model.problemProperty());
        return problem;
    }

    private Node candidates() {
        Label title = new Label(texts.say("measured.candidates"));
        title.getStyleClass().add("card-title");
        Label doubt = new Label(texts.say("measured.doubt"));
        doubt.setWrapText(true);
        doubt.getStyleClass().add("quiet");
        ListView<CandidateEvent> list = new ListView<>();
        list.setId("candidates");
        list.setAccessibleText(texts.say("measured.candidates"));
        list.setCellFactory(view -> new CandidateCell());
        model.candidatesProperty()
                .addListener((o, before, now) -> list.getItems().setAll(now));
        model.axis().unitProperty().addListener((o, before, now) -> list.refresh());
        list.getSelectionModel().selectedItemProperty().addListener((o, before, now) -> {
            if (now != null) {
                model.axis().showCursorAt(now.metres().value());
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        Label impedance = new Label();
        impedance.setId("impedance");
        impedance.setWrapText(true);
        impedance.setMinHeight(Region.USE_PREF_SIZE);
        impedance.textProperty().bind(model.impedanceAtCursor());
        VBox right = new VBox(title, doubt, list, impedance);
        right.setSpacing(6);
        right.getStyleClass().addAll("card", "right-column");
        return right;
    }

    private final class CandidateCell extends ListCell<CandidateEvent> {
        @Override
        protected void updateItem(CandidateEvent one, boolean empty) {
            super.updateItem(one, empty);
            if (empty || one == null) {
                setText(null);
                return;
            }
            Quantities quantities = new Quantities(model.axis().unitProperty().get());
            setText(texts.say(
                    "measured.candidate",
                    quantities.length(one.metres().value(), 2),
                    quantities.length(one.metres().uncertainty(), 2),
                    quantities.percent(one.heightVolts().value()),
                    texts.say("measured.shape." + one.shape().id())));
        }
    }

    private void pressed(KeyEvent event) {
        boolean elsewhere = event.getTarget() instanceof TextInputControl
                || event.getTarget() instanceof ListView
                || (event.getTarget() instanceof Slider && event.getCode().isArrowKey());
        if (elsewhere || model.settingsProperty().get().isEmpty()) {
            return;
        }
        if (event.getCode() == KeyCode.J && !event.isShortcutDown()) {
            model.toggleOtherEnd();
            event.consume();
        } else if (isSetting(event) || AxisKeys.pressed(event, model.traceTrack())) {
            event.consume();
        }
    }

    private boolean isSetting(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return false;
        }
        SettingsViewModel settings = model.settingsProperty().get().orElseThrow();
        for (Setting setting : Setting.values()) {
            if (setting.key().equals(event.getCode().getName())) {
                if (settings.isFree(setting)) {
                    settings.step(setting, event.isShiftDown() ? -1 : 1);
                }
                return true;
            }
        }
        return false;
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.say("measured.open"));
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(
                        texts.say("measured.files"), "*.s1p", "*.s2p", "*.S1P", "*.S2P", "*.csv", "*.txt"));
        Optional.ofNullable(chooser.showOpenDialog(getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(this::open);
    }

    /**
     * Opens a file that was chosen or dropped.
     *
     * @param file the file
     */
    public void open(Path file) {
        model.open(file);
    }

    /** Puts the focus where work begins: on the trace, or on the button that opens a file. */
    public void start() {
        if (model.settingsProperty().get().isPresent()) {
            trace.requestFocus();
        } else {
            open.requestFocus();
        }
    }

    public Node tracks() {
        return card;
    }
}
