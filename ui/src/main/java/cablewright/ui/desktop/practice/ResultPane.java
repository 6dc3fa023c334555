// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.MarkingRules;
import cablewright.lessons.practice.Twin;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.Claim;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.FlagDraft;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.drawing.track.CableDrawing;
import cablewright.ui.words.FindingText;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.NoticeWords;
import cablewright.ui.words.Words;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The right column after commit: marks, each flag's result with its reason, what was missed or hidden, and what to do next. */
final class ResultPane extends VBox {

    private final PracticeViewModel practice;
    private final ExerciseViewModel model;
    private final MarkSheet sheet;
    private final Texts texts;
    private final Words words;
    private final VBox list = new VBox();
    private final Button next;

    ResultPane(PracticeViewModel practice, ExerciseViewModel model, MarkSheet sheet, Texts texts, Words words) {
        this.practice = practice;
        this.model = model;
        this.sheet = sheet;
        this.texts = texts;
        this.words = words;
        this.next = nextButton();
        getStyleClass().addAll("card", "flags");
        setId("result");
        list.getStyleClass().add("flag-list");
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("flag-scroll");
        scroll.setAccessibleText(texts.say("result.title"));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Label title = new Label(texts.say("result.title"));
        title.getStyleClass().add("card-title");
        getChildren().addAll(title, figures(), scroll, more(), next);
        model.axis().unitProperty().addListener((o, before, now) -> fill());
        model.reveal().reasonsProperty().addListener((o, before, now) -> fill());
        practice.roundProperty().addListener((o, before, now) -> updateNext());
        fill();
    }

    /** Another try, and after a miss the same fault on a new cable. */
    private FlowPane more() {
        Button again = small("try-again", practice::tryAgain);
        FlowPane more = new FlowPane(again);
        more.getStyleClass().add("result-more");
        AttemptRecord record = AttemptRecord.of(sheet, practice.lesson(), Instant.EPOCH);
        Twin.of(model.exercise(), practice.twinRequest(model.exercise().id()), record, new SecureRandom().nextInt())
                .ifPresent(request -> more.getChildren().add(0, small("try-twin", () -> practice.tryTwin(request))));
        return more;
    }

    private Button small(String id, Runnable action) {
        Button button = new Button(texts.say("result." + id));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(new Tooltip(texts.say("result." + id + ".name")));
        button.setAccessibleText(texts.say("result." + id + ".name"));
        button.setOnAction(event -> action.run());
        return button;
    }

    private FlowPane figures() {
        FlowPane figures = new FlowPane(figure(
                texts.say("result.marks", FindingWords.marks(sheet.marks()), FindingWords.marks(sheet.maximum())),
                texts.say("result.marks.name")));
        needlessDigs(figures);
        count(figures, sheet.damageLeft(), "damageLeft");
        count(figures, sheet.damageMissed(), "damageMissed");
        if (sheet.hintCostMarks() > 0) {
            figures.getChildren()
                    .add(figure("−" + FindingWords.marks(sheet.hintCostMarks()), texts.say("result.hints.name")));
        }
        figures.getStyleClass().add("figures");
        figures.setId("figures");
        return figures;
    }

    /** With what they cost, so that the marks add up. */
    private void needlessDigs(Pane figures) {
        int digs = sheet.needlessDigs();
        if (digs > 0) {
            String name = texts.say(digs == 1 ? "result.needlessDigs.one" : "result.needlessDigs.name");
            String cost = FindingWords.marks(digs * MarkingRules.DIG_COST_MARKS);
            figures.getChildren().add(figure("−" + cost, digs + " " + name));
        }
    }

    private void count(Pane figures, int count, String key) {
        if (count > 0) {
            String one = count == 1 ? ".one" : ".name";
            figures.getChildren().add(figure(String.valueOf(count), texts.say("result." + key + one)));
        }
    }

    private static VBox figure(String number, String name) {
        Label large = new Label(number);
        large.getStyleClass().add("figure-number");
        large.setMinWidth(Region.USE_PREF_SIZE);
        Label small = new Label(name);
        small.getStyleClass().add("quiet");
        small.setWrapText(true);
        VBox figure = new VBox(large, small);
        figure.setAccessibleText(number + " " + name);
        return figure;
    }

    private Button nextButton() {
        Button button = new Button();
        button.setId("next-exercise");
        button.getStyleClass().addAll("accent", "main-button");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(event -> practice.next());
        update(button);
        return button;
    }

    private void updateNext() {
        update(next);
    }

    private void update(Button button) {
        button.setText(practice.hasNext() ? texts.say("result.next") : practice.overWords());
        button.setAccessibleText(button.getText());
        button.setDisable(!practice.hasNext());
    }

    private void fill() {
        list.getChildren().clear();
        List<FindingReasons> reasons = model.reveal().reasonsProperty().get();
        FindingWords findingWords =
                new FindingWords(words.with(model.axis().unitProperty().get()), model.exercise(), reasons);
        int number = 0;
        for (Finding finding : sheet.findings()) {
            VBox row = row(finding.accept(findingWords));
            int here = number++;
            reasons.stream()
                    .filter(one -> one.finding().equals(finding))
                    .filter(one -> !one.lookHere().isEmpty())
                    .findFirst()
                    .ifPresent(one -> row.getChildren().add(lookButton(one, here)));
            Claim.in(finding).ifPresent(claim -> row.getChildren().add(compareButton(claim)));
            list.getChildren().add(row);
        }
        MarkdownText explanation =
                new MarkdownText(model.exercise().explanation(), model.axis().unitProperty());
        explanation.getStyleClass().add("explanation");
        list.getChildren().add(explanation);
        model.exercise().prediction().ifPresent(asked -> {
            MarkdownText why =
                    new MarkdownText(asked.explanation(), model.axis().unitProperty());
            why.getStyleClass().add("explanation");
            list.getChildren().add(why);
        });
        notices().forEach(notice -> list.getChildren().add(notice));
    }

    /** Where the models behind this trace are stretched: what is shown there is to be taken with care. */
    private List<Label> notices() {
        double top = sheet.attempt().settings().stimulus().topHertz();
        return new NoticeWords(words.with(model.axis().unitProperty().get()))
                .of(model.exercise().cable(), top).stream()
                        .map(sentence -> {
                            Label label = new Label(texts.say("result.notice", sentence));
                            label.setWrapText(true);
                            label.setMinHeight(Region.USE_PREF_SIZE);
                            label.getStyleClass().add("quiet");
                            return label;
                        })
                        .toList();
    }

    private VBox row(FindingText finding) {
        Label title = new Label(finding.title());
        title.getStyleClass().add("finding-title");
        title.setWrapText(true);
        title.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        Label marks = new Label(finding.marks());
        marks.getStyleClass().add("finding-marks");
        marks.setMinWidth(Region.USE_PREF_SIZE);
        HBox head = new HBox();
        finding.letter().ifPresent(letter -> head.getChildren().add(badge(letter)));
        head.getChildren().addAll(outcome(finding.outcome()), title, marks);
        head.setAlignment(Pos.TOP_LEFT);
        head.getStyleClass().add("flag-head");
        Label why = new Label(finding.why());
        why.setWrapText(true);
        why.setMinHeight(Region.USE_PREF_SIZE);
        why.getStyleClass().add("finding-why");
        VBox row = new VBox(head, why);
        row.getStyleClass().add("finding-row");
        row.setAccessibleText(finding.title() + ". " + finding.marks() + ". " + finding.why());
        return row;
    }

    private Button lookButton(FindingReasons reasons, int number) {
        Button look = new Button();
        look.setId("look-" + number);
        look.getStyleClass().addAll("flat", "compare");
        look.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> texts.say(
                                model.reveal()
                                                .pointedAtProperty()
                                                .get()
                                                .filter(reasons.finding()::equals)
                                                .isPresent()
                                        ? "result.unlook"
                                        : "result.look"),
                        model.reveal().pointedAtProperty()));
        look.accessibleTextProperty().bind(look.textProperty());
        look.setOnAction(
                event -> model.reveal().pointOut(reasons, sheet.attempt().settings()));
        return look;
    }

    private Button compareButton(Claim claim) {
        Button compare = new Button();
        compare.setId("compare-" + claim.flag().letter());
        compare.getStyleClass().addAll("flat", "compare");
        compare.setWrapText(true);
        compare.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> {
                            if (model.reveal().nothingToShowProperty().get().equals(Optional.of(claim))) {
                                return nothingToShow(claim);
                            }
                            boolean shown = model.reveal()
                                    .comparedProperty()
                                    .get()
                                    .filter(claim::equals)
                                    .isPresent();
                            return texts.say(
                                    shown ? "result.uncompare" : "result.compare",
                                    words.aKind(claim.flag().kind()));
                        },
                        model.reveal().comparedProperty(),
                        model.reveal().nothingToShowProperty()));
        compare.accessibleTextProperty().bind(compare.textProperty());
        compare.setOnAction(event -> model.reveal().compare(claim));
        return compare;
    }

    private String nothingToShow(Claim claim) {
        double ends = model.reveal()
                .cableTrack()
                .drawingProperty()
                .get()
                .map(CableDrawing::endShownMetres)
                .orElse(Double.POSITIVE_INFINITY);
        Words inUnit = words.with(model.axis().unitProperty().get());
        return claim.flag().startMetres() > ends
                ? texts.say("result.beyond", inUnit.quantities().length(ends))
                : texts.say("result.noSize", words.aKind(claim.flag().kind()));
    }

    private FlagBadge badge(String letter) {
        FlagBadge badge = new FlagBadge(letter);
        Optional<FlagDraft> flag = model.flags().draftsProperty().get().stream()
                .filter(draft -> draft.letter().equals(letter))
                .findFirst();
        flag.ifPresent(draft -> badge.show(draft.verdict()));
        return badge;
    }

    private Label outcome(FindingText.Outcome outcome) {
        String word = outcome.name().toLowerCase(Locale.ROOT);
        Label sign = new Label(texts.say("outcome." + word + ".sign"));
        sign.setAccessibleText(texts.say("outcome." + word + ".name"));
        sign.getStyleClass().addAll("outcome", "outcome-" + word);
        sign.setMinWidth(Region.USE_PREF_SIZE);
        return sign;
    }

    Button next() {
        return next;
    }
}
