// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.trial;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.practice.PracticeView;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.time.Clock;
import java.util.Locale;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/**
 * The lesson on the Bench as Practice shows it, opened at the exercise that is worked on. It is a copy: what is flagged and
 * marked here is kept nowhere, and ends with the view.
 */
public final class TrialView extends BorderPane {

    private static final String PRACTICE_TEXTS = "cablewright.ui.desktop.shell.desktop";

    private final PracticeViewModel model;
    private final PracticeView practice;

    /**
     * Opens the lesson.
     *
     * @param document what is on the Bench
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param clock gives the times at which exercises are opened and committed
     * @param back goes back to the Bench
     * @param locale the language
     */
    public TrialView(
            BenchDocument document,
            ObjectProperty<LengthUnit> unit,
            Threads threads,
            Clock clock,
            Runnable back,
            Locale locale) {
        Texts texts = new Texts(PRACTICE_TEXTS, locale);
        model = new PracticeViewModel(document.lesson(), unit, threads, texts, clock);
        model.select(document.index());
        practice = new PracticeView(model, texts, Words.in(unit.get(), locale));
        getStyleClass().add("trial");
        setId("trial");
        setTop(bar(back, EditorTexts.open(locale)));
        setCenter(practice);
        // After Practice, which has its own use for the key while a list is open.
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                event.consume();
                back.run();
            }
        });
    }

    private static HBox bar(Runnable back, Texts texts) {
        Label notice = new Label(texts.say("trial.notice"));
        notice.setId("trial-notice");
        notice.setWrapText(true);
        HBox.setHgrow(notice, Priority.ALWAYS);
        notice.setMaxWidth(Double.MAX_VALUE);
        Button leave = new Button(texts.say("trial.back"));
        leave.setId("trial-back");
        leave.setAccessibleText(texts.say("trial.back.name"));
        leave.setMinWidth(Region.USE_PREF_SIZE);
        leave.setOnAction(event -> back.run());
        HBox bar = new HBox(notice, leave);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("notice-bar");
        return bar;
    }

    /** Puts the focus where reading begins. */
    public void start() {
        practice.start();
    }

    public PracticeViewModel model() {
        return model;
    }

    public Node tracks() {
        return practice.tracks();
    }
}
