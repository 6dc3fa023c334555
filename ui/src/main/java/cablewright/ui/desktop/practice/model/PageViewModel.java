// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.ui.desktop.practice.figure.LiveFigureViewModel;
import cablewright.ui.desktop.task.Threads;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/** A page of a lesson being read: what it asks comes first, then what it shows, then why. */
public final class PageViewModel {

    private final LessonPage page;
    private final Threads threads;
    private List<LiveFigureViewModel> figures = List.of();
    private final ReadOnlyBooleanWrapper open;
    private List<Choice> chosen = List.of();

    /**
     * Makes the model of a page that nobody read yet.
     *
     * @param page the page
     * @param threads where to work and where to show
     */
    public PageViewModel(LessonPage page, Threads threads) {
        this.page = page;
        this.threads = threads;
        this.open = new ReadOnlyBooleanWrapper(page.prediction().isEmpty());
    }

    public LessonPage page() {
        return page;
    }

    /**
     * Returns the page's live figures, which are computed once they are asked for.
     *
     * @return the figures
     */
    public List<LiveFigureViewModel> figures() {
        if (figures.isEmpty()) {
            figures = page.figures().stream()
                    .map(figure -> new LiveFigureViewModel(figure, threads))
                    .toList();
        }
        return figures;
    }

    /**
     * Answers what the page asks; then it shows what there is to see.
     *
     * @param choiceId the answer
     * @param reasonId the reason, where the page asks for one
     */
    public void answer(String choiceId, Optional<String> reasonId) {
        Prediction asked = page.prediction().orElseThrow();
        if (asked.isAnswer(choiceId, reasonId)) {
            List<Choice> both = new ArrayList<>();
            asked.choice(choiceId).ifPresent(both::add);
            asked.reasons().map(Reasons::choices).ifPresent(all -> all.stream()
                    .filter(it -> reasonId.equals(Optional.of(it.id())))
                    .forEach(both::add));
            chosen = List.copyOf(both);
            open.set(true);
        }
    }

    /**
     * Returns what was answered.
     *
     * @return the answer, and the reason where the page asks for one; nothing before
     */
    public List<Choice> chosen() {
        return chosen;
    }

    /**
     * Returns whether text and pictures may be seen.
     *
     * @return false while the question waits
     */
    public ReadOnlyBooleanProperty openProperty() {
        return open.getReadOnlyProperty();
    }
}
