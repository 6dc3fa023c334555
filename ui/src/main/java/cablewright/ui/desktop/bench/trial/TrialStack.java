// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.trial;

import cablewright.lessons.bench.BenchDocument;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;

/** The Bench, and over it, while it is tried, the exercise as a trainee sees it. */
public final class TrialStack extends StackPane {

    private final Supplier<BenchDocument> document;
    private final ObjectProperty<LengthUnit> unit;
    private final Threads threads;
    private final Clock clock;
    private final Locale locale;
    private Optional<Node> bench = Optional.empty();
    private Optional<TrialView> trial = Optional.empty();
    private Optional<Node> focusBefore = Optional.empty();

    /**
     * Makes an empty stack; {@link #put} gives it the Bench.
     *
     * @param document gives what is on the Bench
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param clock gives the times at which exercises are opened and committed
     * @param locale the language
     */
    public TrialStack(
            Supplier<BenchDocument> document,
            ObjectProperty<LengthUnit> unit,
            Threads threads,
            Clock clock,
            Locale locale) {
        this.locale = locale;
        this.document = document;
        this.unit = unit;
        this.threads = threads;
        this.clock = clock;
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.isShortcutDown() && event.getCode() == KeyCode.T) {
                event.consume();
                open();
            }
        });
    }

    /**
     * Puts the Bench beneath.
     *
     * @param node the Bench
     */
    public void put(Node node) {
        bench = Optional.of(node);
        getChildren().setAll(node);
    }

    /** Opens what is on the Bench as a trainee sees it. */
    public void open() {
        if (trial.isEmpty()) {
            focusBefore = Optional.ofNullable(getScene()).map(scene -> scene.getFocusOwner());
            TrialView view = new TrialView(document.get(), unit, threads, clock, this::close, locale);
            trial = Optional.of(view);
            bench.ifPresent(node -> node.setVisible(false));
            getChildren().add(view);
            view.start();
        }
    }

    /** Goes back to the Bench. */
    public void close() {
        trial.ifPresent(view -> getChildren().remove(view));
        trial = Optional.empty();
        bench.ifPresent(node -> node.setVisible(true));
        focusBefore.ifPresent(Node::requestFocus);
    }

    /**
     * Puts the focus where work begins.
     *
     * @param bench does so on the Bench
     */
    public void start(Runnable bench) {
        trial.ifPresentOrElse(TrialView::start, bench);
    }

    /**
     * Returns what a picture of the work shows.
     *
     * @param bench what one of the Bench shows
     * @return that, or the tracks of what is being tried
     */
    public Node picture(Node bench) {
        return trial.map(TrialView::tracks).orElse(bench);
    }

    /**
     * Returns what is being tried.
     *
     * @return the view; empty while nothing is
     */
    public Optional<TrialView> trial() {
        return trial;
    }
}
