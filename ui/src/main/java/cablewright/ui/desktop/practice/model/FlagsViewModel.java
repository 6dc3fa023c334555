// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.bench.EditHistory;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.draft.FlagSketch;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.track.FlagMarkerActions;
import cablewright.ui.drawing.track.FlagMarker;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The flags of one exercise: setting, moving and changing them, each step undone and redone at will until commit. */
public final class FlagsViewModel implements FlagMarkerActions {

    /** Flags are undone without a word for what is undone. */
    private static final String STEP = "flags";

    private EditHistory<List<FlagDraft>> history = new EditHistory<>(List.of());
    private final SettingsViewModel settings;
    private final ReadOnlyObjectWrapper<List<FlagDraft>> drafts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<String>> selected = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper redoable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper frozen = new ReadOnlyBooleanWrapper();

    /**
     * Begins without a flag.
     *
     * @param settings what is set on the instrument, with which flags are read
     */
    public FlagsViewModel(SettingsViewModel settings) {
        this.settings = settings;
        settings.velocityProperty().addListener((o, before, now) -> retell(now.doubleValue()));
    }

    /** A changed velocity is no step of its own: the flags stay where they are on the trace. */
    private void retell(double velocity) {
        if (!frozen.get()) {
            drafts.set(toldAt(history.now(), velocity));
        }
    }

    private static List<FlagDraft> toldAt(List<FlagDraft> flags, double velocity) {
        return flags.stream().map(flag -> flag.toldAt(velocity)).toList();
    }

    /**
     * Returns the flags.
     *
     * @return the flags by letter, with distances at the set velocity
     */
    public ReadOnlyObjectProperty<List<FlagDraft>> draftsProperty() {
        return drafts.getReadOnlyProperty();
    }

    /**
     * Returns the letter of the flag on which keys act.
     *
     * @return the letter, if a flag is selected
     */
    public ReadOnlyObjectProperty<Optional<String>> selectedProperty() {
        return selected.getReadOnlyProperty();
    }

    /**
     * Returns whether there is a step to undo.
     *
     * @return true after a change
     */
    public ReadOnlyBooleanProperty undoableProperty() {
        return undoable.getReadOnlyProperty();
    }

    /**
     * Returns whether there is a step to redo.
     *
     * @return true after undoing
     */
    public ReadOnlyBooleanProperty redoableProperty() {
        return redoable.getReadOnlyProperty();
    }

    public Optional<FlagDraft> selectedDraft() {
        return selected.get().flatMap(this::find);
    }

    private Optional<FlagDraft> find(String letter) {
        return drafts.get().stream()
                .filter(flag -> flag.letter().equals(letter))
                .findFirst();
    }

    @Override
    public void place(double metres) {
        if (frozen.get() || drafts.get().size() >= Attempt.MOST_FLAGS) {
            return;
        }
        String letter = nextLetter();
        List<FlagDraft> next = new ArrayList<>(drafts.get());
        next.add(FlagDraft.at(
                letter,
                settings.endProperty().get(),
                Math.max(0, metres),
                settings.velocityProperty().get(),
                settings.stimulusProperty().get()));
        next.sort((a, b) -> Integer.compare(rank(a.letter()), rank(b.letter())));
        step(next);
        selected.set(Optional.of(letter));
    }

    @Override
    public Optional<String> begin(double metres) {
        List<FlagDraft> before = drafts.get();
        place(metres);
        return before.equals(drafts.get()) ? Optional.empty() : selected.get();
    }

    private static int rank(String letter) {
        int rank = 0;
        for (char c : letter.toCharArray()) {
            rank = 26 * rank + (c - 'A' + 1);
        }
        return rank;
    }

    private String nextLetter() {
        for (int i = 1; ; i++) {
            String letter = "";
            for (int rest = i; rest > 0; rest = (rest - 1) / 26) {
                letter = (char) ('A' + (rest - 1) % 26) + letter;
            }
            if (find(letter).isEmpty()) {
                return letter;
            }
        }
    }

    @Override
    public void select(String letter) {
        selected.set(find(letter).map(FlagDraft::letter));
    }

    /**
     * Selects the next flag along the axis, or the one before.
     *
     * @param direction 1 for the next, −1 for the one before
     */
    public void selectNeighbour(int direction) {
        List<FlagDraft> along = new ArrayList<>(drafts.get());
        along.sort((a, b) -> Double.compare(a.startMetres(), b.startMetres()));
        if (along.isEmpty()) {
            return;
        }
        int now = selected.get().flatMap(this::find).map(along::indexOf).orElse(direction > 0 ? -1 : along.size());
        select(along.get(Math.floorMod(now + direction, along.size())).letter());
    }

    /**
     * Moves the selected flag.
     *
     * @param metres where to, at the set velocity [m]
     */
    public void moveSelected(double metres) {
        change(flag -> readAnew(flag).movedTo(Math.max(0, metres)));
    }

    /**
     * Gives the selected flag a second place, so that it claims the stretch between the two.
     *
     * @param metres the second place, at the set velocity [m]
     */
    public void stretchSelected(double metres) {
        change(flag -> readAnew(flag).endingAt(OptionalDouble.of(Math.max(0, metres))));
    }

    /** Takes the selected flag's second place away. */
    public void unstretchSelected() {
        change(flag -> flag.endingAt(OptionalDouble.empty()));
    }

    /**
     * Says what a flag claims to be there.
     *
     * @param letter the flag
     * @param kind the kind
     */
    public void say(String letter, EventKind kind) {
        change(letter, flag -> flag.of(kind));
    }

    /**
     * Says whether what a flag marks belongs.
     *
     * @param letter the flag
     * @param verdict the verdict
     */
    public void judge(String letter, Verdict verdict) {
        change(letter, flag -> flag.judged(verdict));
    }

    /** Turns the selected flag's verdict over; damage where none was said. */
    public void turnVerdict() {
        change(flag -> flag.judged(
                flag.verdict().filter(said -> said == Verdict.DAMAGE).isPresent() ? Verdict.BELONGS : Verdict.DAMAGE));
    }

    /** Removes the selected flag and selects its neighbour. */
    public void removeSelected() {
        selected.get().ifPresent(this::remove);
    }

    /**
     * Removes a flag.
     *
     * @param letter its letter
     */
    public void remove(String letter) {
        if (frozen.get()) {
            return;
        }
        List<FlagDraft> next = drafts.get().stream()
                .filter(flag -> !flag.letter().equals(letter))
                .toList();
        step(next);
        selected.set(
                next.isEmpty()
                        ? Optional.empty()
                        : Optional.of(next.get(next.size() - 1).letter()));
    }

    @Override
    public void drag(String letter, boolean secondStaff, double metres) {
        if (!frozen.get()) {
            double place = Math.max(0, metres);
            drafts.set(replaced(
                    letter,
                    flag -> secondStaff
                            ? readAnew(flag).endingAt(OptionalDouble.of(place))
                            : readAnew(flag).movedTo(place)));
        }
    }

    @Override
    public void drop() {
        if (!frozen.get()) {
            step(drafts.get());
        }
    }

    /** Takes the last step back. */
    public void undo() {
        if (!frozen.get()) {
            history.undo();
            show();
        }
    }

    /** Takes the last undone step again. */
    public void redo() {
        if (!frozen.get()) {
            history.redo();
            show();
        }
    }

    /** A flag that is moved is read with what is set now. */
    private FlagDraft readAnew(FlagDraft flag) {
        return flag.toldAt(settings.velocityProperty().get())
                .readWith(settings.stimulusProperty().get());
    }

    private void change(UnaryOperator<FlagDraft> how) {
        selected.get().ifPresent(letter -> change(letter, how));
    }

    private void change(String letter, UnaryOperator<FlagDraft> how) {
        if (!frozen.get()) {
            step(replaced(letter, how));
        }
    }

    private List<FlagDraft> replaced(String letter, UnaryOperator<FlagDraft> how) {
        return drafts.get().stream()
                .map(flag -> flag.letter().equals(letter) ? how.apply(flag) : flag)
                .toList();
    }

    private void step(List<FlagDraft> next) {
        history.step(STEP, List.copyOf(next));
        show();
    }

    private void show() {
        drafts.set(toldAt(history.now(), settings.velocityProperty().get()));
        if (selected.get().flatMap(this::find).isEmpty()) {
            selected.set(Optional.empty());
        }
        undoable.set(history.undoName().isPresent());
        redoable.set(history.redoName().isPresent());
    }

    /**
     * Finds the first flag that does not say all it must.
     *
     * @return the flag, if there is one
     */
    public Optional<FlagDraft> firstIncomplete() {
        return drafts.get().stream().filter(flag -> !flag.isComplete()).findFirst();
    }

    /**
     * Hands the flags in: from now on they stay as they are.
     *
     * @return the flags; each must be complete
     */
    public List<Flag> freeze() {
        List<Flag> flags = drafts.get().stream().map(FlagDraft::toFlag).toList();
        stop();
        return flags;
    }

    /**
     * Takes up flags that were kept; there is no step before them.
     *
     * @param kept the flags
     */
    public void restore(List<Flag> kept) {
        history = new EditHistory<>(kept.stream()
                .map(flag -> FlagDraft.of(flag, settings.stimulusProperty().get()))
                .toList());
        show();
    }

    /**
     * Takes up flags that were begun; there is no step before them.
     *
     * @param kept the flags, complete or not
     */
    void resume(List<FlagSketch> kept) {
        history = new EditHistory<>(kept.stream().map(FlagDraft::of).toList());
        show();
    }

    /**
     * Returns the flags that say all they must.
     *
     * @return those with a kind and a verdict, in order of their letters
     */
    public List<Flag> complete() {
        return drafts.get().stream()
                .filter(FlagDraft::isComplete)
                .map(FlagDraft::toFlag)
                .toList();
    }

    /** From now on the flags stay as they are, complete or not. */
    public void stop() {
        frozen.set(true);
        undoable.set(false);
        redoable.set(false);
    }

    /** Takes a hand-in back, after it could not be marked. */
    void thaw() {
        frozen.set(false);
        show();
    }

    /**
     * Returns the flags of the tested end as pennants.
     *
     * @return those read from this end
     */
    public List<FlagMarker> pennants() {
        LineEnd shown = settings.endProperty().get();
        double velocity = settings.velocityProperty().get();
        return drafts.get().stream()
                .filter(flag -> flag.end() == shown)
                .map(flag -> pennant(flag.toldAt(velocity)))
                .toList();
    }

    private FlagMarker pennant(FlagDraft flag) {
        FlagMarker.Look look = flag.verdict().isEmpty()
                ? FlagMarker.Look.UNSAID
                : flag.verdict().get() == Verdict.BELONGS ? FlagMarker.Look.BELONGS : FlagMarker.Look.DAMAGE;
        boolean isSelected = selected.get().filter(flag.letter()::equals).isPresent();
        return new FlagMarker(flag.letter(), flag.startMetres(), flag.endMetres(), look, isSelected);
    }
}
