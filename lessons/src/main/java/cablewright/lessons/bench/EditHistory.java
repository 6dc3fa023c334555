// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Steps of one immutable state that can be undone and redone, each with the name of what was done. Steps that belong to one
 * movement, such as those of a dragged slider, become one.
 *
 * @param <S> the state
 */
public final class EditHistory<S> {

    private static final int MOST_STEPS = 500;

    private final Deque<Step<S>> before = new ArrayDeque<>();
    private final Deque<Step<S>> after = new ArrayDeque<>();
    private S now;
    private Optional<String> movement = Optional.empty();

    private record Step<T>(String name, T state) {}

    /**
     * Begins a history.
     *
     * @param first the state at its start
     */
    public EditHistory(S first) {
        now = first;
    }

    /**
     * Returns the state that holds.
     *
     * @return the state
     */
    public S now() {
        return now;
    }

    /**
     * Takes a step by itself. One that changes nothing is none.
     *
     * @param name what is done
     * @param next the state after it
     */
    public void step(String name, S next) {
        endMovement();
        take(name, next);
    }

    /**
     * Takes a step that belongs to a movement: while the movement lasts its steps count as one.
     *
     * @param name what is done
     * @param of names the movement
     * @param next the state after it
     */
    public void move(String name, String of, S next) {
        if (movement.equals(Optional.of(of))) {
            now = next;
            after.clear();
        } else if (!next.equals(now)) {
            take(name, next);
            movement = Optional.of(of);
        }
    }

    /** Ends the movement, if there is one: what follows is another step. */
    public void endMovement() {
        movement = Optional.empty();
    }

    private void take(String name, S next) {
        if (next.equals(now)) {
            return;
        }
        before.push(new Step<>(name, now));
        if (before.size() > MOST_STEPS) {
            before.removeLast();
        }
        after.clear();
        now = next;
    }

    /**
     * Returns the name of what would be undone.
     *
     * @return the name; empty where nothing can be
     */
    public Optional<String> undoName() {
        return Optional.ofNullable(before.peek()).map(Step::name);
    }

    /**
     * Returns the name of what would be done again.
     *
     * @return the name; empty where nothing can be
     */
    public Optional<String> redoName() {
        return Optional.ofNullable(after.peek()).map(Step::name);
    }

    /**
     * Returns the state before the last step.
     *
     * @return the state; empty at the start
     */
    public Optional<S> previous() {
        return Optional.ofNullable(before.peek()).map(Step::state);
    }

    /** Goes one step back, if there is one. */
    public void undo() {
        shift(before, after);
    }

    /** Goes one step on again, if there is one. */
    public void redo() {
        shift(after, before);
    }

    private void shift(Deque<Step<S>> from, Deque<Step<S>> to) {
        endMovement();
        if (!from.isEmpty()) {
            Step<S> step = from.pop();
            to.push(new Step<>(step.name(), now));
            now = step.state();
        }
    }
}
