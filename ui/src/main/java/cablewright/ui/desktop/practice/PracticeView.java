// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import cablewright.ui.desktop.practice.model.PracticeViewModel;
import cablewright.ui.words.Words;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** Practice on the screen: the open exercise of a lesson. */
public final class PracticeView extends StackPane {

    private final PracticeViewModel model;
    private final Texts texts;
    private final Words words;
    private final Map<ExerciseViewModel, ExerciseView> views = new HashMap<>();
    private ExerciseView shown;
    private Optional<PageView> page = Optional.empty();

    /**
     * Shows a lesson.
     *
     * @param model the lesson being done
     * @param texts texts of the desktop
     * @param words words for events and findings
     */
    public PracticeView(PracticeViewModel model, Texts texts, Words words) {
        this.model = model;
        this.texts = texts;
        this.words = words;
        getStyleClass().add("practice");
        model.indexProperty().addListener((o, before, now) -> show());
        model.pageProperty().addListener((o, before, now) -> show());
        show();
    }

    /** Each exercise keeps its view, as it keeps what was done in it; a page before it stands in its place. */
    private void show() {
        shown = views.computeIfAbsent(model.current(), exercise -> new ExerciseView(model, exercise, texts, words));
        page = model.pageProperty()
                .get()
                .map(it -> new PageView(it, texts, words, model.current().axis().unitProperty(), model::turnPage));
        getChildren().setAll(page.<Node>map(it -> it).orElse(shown));
        if (getScene() != null) {
            start();
        }
    }

    /** Puts the focus where work begins. */
    public void start() {
        // Only with its style does a scroll pane take up its content, which can have no focus before.
        getChildren().get(0).applyCss();
        page.ifPresentOrElse(PageView::start, shown::start);
    }

    /**
     * Returns what a picture of the work shows.
     *
     * @return the three tracks, or the page in their place
     */
    public Node tracks() {
        return page.<Node>map(it -> it).orElseGet(shown::tracks);
    }
}
