// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Nature;
import cablewright.ui.desktop.choice.ChoiceLook;
import cablewright.ui.desktop.practice.model.FlagDraft;
import cablewright.ui.desktop.practice.model.FlagsViewModel;
import cablewright.ui.desktop.track.EventIcon;
import cablewright.ui.desktop.track.SampleEvents;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** One flag in the list: its letter and place, and, while it is selected, the controls that say what it is. */
final class FlagRow extends VBox {

    private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

    private final FlagsViewModel flags;
    private final Texts texts;
    private final String letter;
    private final FlagBadge badge;
    private final Label place = new Label();
    private final Label claim = new Label();
    private final Button remove = new Button("", new FontIcon(Feather.X));
    private final ComboBox<EventKind> kind = new ComboBox<>();
    private final RadioButton belongs = new RadioButton();
    private final RadioButton damage = new RadioButton();
    private final HBox verdicts = new HBox(belongs, damage);
    private boolean updating;

    FlagRow(FlagsViewModel flags, String letter, List<EventKind> kinds, Texts texts, Words words) {
        this.flags = flags;
        this.letter = letter;
        this.texts = texts;
        this.badge = new FlagBadge(letter);
        getStyleClass().add("flag-row");
        setId("flag-" + letter);
        buildKind(kinds, words);
        buildVerdicts(words);
        remove.getStyleClass().addAll("flat", "small-button");
        remove.setAccessibleText(texts.say("flag.remove", letter));
        remove.setOnAction(event -> flags.remove(letter));
        place.getStyleClass().add("flag-place");
        place.setMinWidth(Region.USE_PREF_SIZE);
        claim.getStyleClass().add("flag-claim");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox head = new HBox(badge, place, claim, space, remove);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("flag-head");
        getChildren().addAll(head, kind, verdicts);
        setOnMousePressed(event -> flags.select(letter));
    }

    private void buildKind(List<EventKind> kinds, Words words) {
        kind.getItems().setAll(kinds);
        kind.setId("flag-kind-" + letter);
        kind.setPromptText(texts.say("flag.kind.prompt"));
        kind.setVisibleRowCount(12);
        kind.setMaxWidth(Double.MAX_VALUE);
        kind.setAccessibleText(texts.say("flag.kind", letter));
        new ChoiceLook<EventKind>(
                        words::kindToChoose,
                        it -> Optional.of(texts.say(
                                it.nature() == Nature.HARDWARE ? "flag.kinds.hardware" : "flag.kinds.damage")),
                        it -> Optional.of(new EventIcon(SampleEvents.of(it))))
                .on(kind);
        kind.valueProperty().addListener((o, before, now) -> {
            if (!updating && now != null) {
                flags.say(letter, now);
            }
        });
        kind.focusedProperty().addListener((o, before, now) -> {
            if (now) {
                flags.select(letter);
            }
        });
    }

    private void buildVerdicts(Words words) {
        ToggleGroup group = new ToggleGroup();
        verdicts.getStyleClass().add("verdicts");
        radio(belongs, group, Verdict.BELONGS, words);
        radio(damage, group, Verdict.DAMAGE, words);
    }

    private void radio(RadioButton button, ToggleGroup group, Verdict verdict, Words words) {
        button.setText(words.verdict(verdict));
        button.setId("flag-" + words.verdict(verdict) + "-" + letter);
        button.setToggleGroup(group);
        button.setAccessibleText(texts.say("flag.verdict", letter, words.verdict(verdict)));
        button.setOnAction(event -> flags.judge(letter, verdict));
    }

    void update(FlagDraft draft, boolean selected, Words words) {
        updating = true;
        pseudoClassStateChanged(SELECTED, selected);
        badge.show(draft.verdict());
        place.setText(placeOf(draft, words));
        String said = draft.kind().map(words::kind).orElse(texts.say("flag.unsaid"));
        String judged = draft.verdict().map(words::verdict).orElse("");
        claim.setText(selected ? "" : texts.say("flag.claim", said, judged).strip());
        kind.setValue(draft.kind().orElse(null));
        belongs.setSelected(draft.verdict().filter(v -> v == Verdict.BELONGS).isPresent());
        damage.setSelected(draft.verdict().filter(v -> v == Verdict.DAMAGE).isPresent());
        for (Region control : List.of(kind, verdicts, remove)) {
            control.setVisible(selected);
            control.setManaged(selected);
        }
        setAccessibleText(texts.say("flag.spoken", letter, place.getText(), said, judged));
        updating = false;
    }

    private String placeOf(FlagDraft draft, Words words) {
        String where = draft.endMetres().isPresent()
                ? stretch(draft.startMetres(), draft.endMetres().getAsDouble(), words)
                : words.quantities().length(draft.startMetres());
        return draft.end() == LineEnd.FAR ? texts.say("flag.fromFar", where) : where;
    }

    private static String stretch(double one, double other, Words words) {
        return words.quantities().stretch(Math.min(one, other), Math.max(one, other));
    }

    void openKinds() {
        kind.requestFocus();
        kind.show();
    }

    ComboBox<EventKind> kindBox() {
        return kind;
    }
}
