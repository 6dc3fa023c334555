// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.text.Texts;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.visibility.EventVisibility;
import cablewright.simulator.explanation.visibility.PlaceVisibility;
import cablewright.simulator.explanation.visibility.Suggestion;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.reading.Cursor;
import cablewright.simulator.reading.EventReturnLoss;
import cablewright.ui.desktop.bench.model.BenchTraceViewModel;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.VisibilityWords;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** How the selected event shows at what is set: the mark, the reason, what would show it, and the numbers behind it. */
final class VisibilityCard extends VBox {

    private static final PseudoClass OLD = PseudoClass.getPseudoClass("old");

    private final BenchViewModel model;
    private final Texts texts;
    private final Label verdict = new Label();
    private final Label reason = new Label();
    private final Label advice = new Label();
    private final Button take = new Button();
    private final GridPane figures = new GridPane();

    VisibilityCard(BenchViewModel model) {
        this.model = model;
        this.texts = model.texts();
        setId("sight");
        getStyleClass().add("sight");
        verdict.setId("sight-verdict");
        verdict.getStyleClass().add("sight-verdict");
        wrap(reason, "sight-reason");
        wrap(advice, "sight-advice");
        take.setId("sight-take");
        take.setText(texts.say("sight.take"));
        take.setAccessibleText(texts.say("sight.take"));
        figures.getStyleClass().add("sight-figures");
        getChildren().addAll(verdict, reason, advice, take, figures);
        BenchTraceViewModel trace = model.trace();
        trace.factsProperty().addListener(changed -> show());
        trace.adviceProperty().addListener(changed -> showAdvice());
        trace.toldProperty().addListener(changed -> show());
        trace.cableTrack().sightsProperty().addListener(changed -> show());
        trace.sightsAreOldProperty().addListener((o, before, now) -> pseudoClassStateChanged(OLD, now));
        trace.axis().unitProperty().addListener(changed -> show());
        show();
        showAdvice();
    }

    private static void wrap(Label label, String id) {
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
    }

    private Optional<EventVisibility> sight() {
        return model.trace()
                .toldProperty()
                .get()
                .flatMap(id -> model.trace().cableTrack().sightsProperty().get().stream()
                        .filter(sight -> sight.eventId().equals(id))
                        .findFirst());
    }

    private void show() {
        Optional<EventVisibility> sight = sight();
        verdict.getStyleClass().removeIf(style -> style.startsWith("seen-"));
        if (sight.isEmpty()) {
            verdict.setText(texts.say("sight.looking"));
            reason.setText("");
        } else {
            String word = word(sight.get().visibility());
            verdict.setText(texts.say("sight." + word));
            verdict.getStyleClass().add("seen-" + word);
            reason.setText(reason(sight.get()));
        }
        figures.getChildren().clear();
        List<EventFacts> facts = model.trace().factsProperty().get();
        if (!facts.isEmpty()
                && sight.filter(it -> it.eventId().equals(facts.get(0).event().id()))
                        .isPresent()) {
            fill(facts);
        }
    }

    private static String word(Visibility visibility) {
        return visibility.name().toLowerCase(Locale.ROOT);
    }

    /** What the best place sends back, or why it is not clear; then why the other place of a stretch is not. */
    private String reason(EventVisibility sight) {
        VisibilityWords sights =
                new VisibilityWords(model.words(), model.document().now().cable());
        PlaceVisibility best = sight.best();
        StringBuilder said = new StringBuilder(sights.whyNotClear(sight)
                .orElseGet(() -> texts.say(
                        "sight.sendsBack",
                        model.words().quantities().length(best.shownMetres()),
                        model.words().quantities().percent(best.expectedVolts()),
                        sights.looks(best.expectedVolts()))));
        for (PlaceVisibility place : sight.places()) {
            if (!place.equals(best)) {
                sights.whyNotClear(sight, place).ifPresent(why -> said.append('\n')
                        .append(texts.say(
                                "sight.otherPlace", model.words().quantities().length(place.shownMetres()), why)));
            }
        }
        return said.toString();
    }

    private void showAdvice() {
        BenchTraceViewModel.Advice now = model.trace().adviceProperty().get();
        Words words = model.words();
        String said = "";
        if (now.isSearching()) {
            said = texts.say("sight.searching");
        } else if (now.suggestion().isPresent()) {
            Suggestion found = now.suggestion().get();
            said = texts.say(
                    "sight.advice." + word(found.visibility()),
                    words.stimulus(found.settings().stimulus()),
                    words.end(found.end()),
                    found.settings().averages());
            take.setOnAction(event -> model.trace().take(found));
        } else if (now.wasSearched()) {
            said = texts.say("sight.noAdvice");
        }
        advice.setText(said);
        shown(advice, !said.isEmpty());
        shown(take, now.suggestion().isPresent());
    }

    private static void shown(Region node, boolean isShown) {
        node.setVisible(isShown);
        node.setManaged(isShown);
    }

    /** One column for each place of the event: the near edge, and for a stretch the far one. */
    private void fill(List<EventFacts> facts) {
        Quantities quantities = model.words().quantities();
        heads(facts.get(0).eventOhms().isPresent());
        for (int i = 0; i < facts.size(); i++) {
            EventFacts fact = facts.get(i);
            PlaceVisibility place = fact.place();
            EventReturnLoss loss = new EventReturnLoss(
                    new Cursor(place.shownMetres(), place.thereAndBackSeconds(), place.expectedVolts()),
                    fact.sight().noiseVolts(),
                    Math.max(0, fact.lossDecibels().orElse(0)));
            String none = texts.say("figure.none");
            figure(i, 0, quantities.length(place.shownMetres()));
            figure(i, 1, quantities.percent(place.expectedVolts()));
            figure(
                    i,
                    2,
                    fact.coefficient().isPresent() ? signed(fact.coefficient().getAsDouble()) : none);
            figure(
                    i,
                    3,
                    Double.isFinite(loss.correctedDecibels())
                            ? Quantities.number(Math.max(0, loss.correctedDecibels()), 1) + "\u00a0dB"
                            : none);
            figure(
                    i,
                    4,
                    fact.lossDecibels().isPresent()
                            ? Quantities.number(fact.lossDecibels().getAsDouble(), 1) + "\u00a0dB"
                            : none);
            figure(i, 5, impedance(fact, quantities));
            figure(i, 6, quantities.ohms(fact.soundOhms()));
        }
    }

    private static String signed(double coefficient) {
        String text = Quantities.number(coefficient, 3);
        return coefficient > 0 ? "+" + text : text;
    }

    /** What the condition leaves, or what a thing at one place seems to be. */
    private String impedance(EventFacts fact, Quantities quantities) {
        OptionalDouble ohms = fact.eventOhms().isPresent() ? fact.eventOhms() : fact.apparentOhms();
        return ohms.isPresent() ? quantities.ohms(ohms.getAsDouble()) : texts.say("figure.none");
    }

    private void heads(boolean isKnown) {
        String[] keys = {"shown", "height", "coefficient", "returnLoss", "loss", isKnown ? "impedance" : "asIf", "sound"
        };
        for (int row = 0; row < keys.length; row++) {
            Label head = new Label(texts.say("figure." + keys[row]));
            head.getStyleClass().add("quiet");
            head.setWrapText(true);
            figures.add(head, 0, row);
        }
    }

    private void figure(int column, int row, String text) {
        Label value = new Label(text);
        value.getStyleClass().add("figure-value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        figures.add(value, column + 1, row);
    }
}
