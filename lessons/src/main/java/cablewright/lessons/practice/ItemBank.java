// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import cablewright.simulator.cable.EventKind;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Items with their difficulties as answers have shown them. Immutable; an answer makes another.
 *
 * @param items items by what they ask, in the order in which they were added
 */
public record ItemBank(Map<Task, Item> items) {

    /** Copies the map and keeps its order. */
    public ItemBank {
        items = Collections.unmodifiableMap(new LinkedHashMap<>(items));
    }

    /**
     * One thing that can be asked.
     *
     * @param kind the kind of event that it is about
     * @param step difficulty that the generator is asked for, 0 to 1
     */
    public record Task(EventKind kind, double step) {}

    /**
     * One thing that can be asked, and what answers have shown of it.
     *
     * @param task what is asked
     * @param difficulty how hard it is
     */
    public record Item(Task task, Rating difficulty) {

        public EventKind kind() {
            return task.kind();
        }
    }

    /**
     * Makes a bank.
     *
     * @param items the items
     * @return the bank
     */
    public static ItemBank of(List<Item> items) {
        Map<Task, Item> byTask = new LinkedHashMap<>();
        items.forEach(item -> byTask.put(item.task(), item));
        return new ItemBank(byTask);
    }

    /**
     * Learns from an answer.
     *
     * @param task what was asked
     * @param ability ability of who answered, as known before [logits]
     * @param success how well it was answered, 0 to 1
     * @return the bank that knows it
     */
    public ItemBank after(Task task, double ability, double success) {
        TraineeModel.requireSuccess(success);
        Item before = items.get(task);
        if (before == null) {
            throw new IllegalArgumentException(task + " is not in the bank");
        }
        double surprise = Elo.chance(ability, before.difficulty().logits()) - success;
        Map<Task, Item> next = new LinkedHashMap<>(items);
        next.put(task, new Item(task, before.difficulty().moved(surprise)));
        return new ItemBank(next);
    }

    /**
     * Chooses what to ask next: the item at which the trainee's chance is nearest to what is aimed at, among those that were
     * not asked of late.
     *
     * @param trainee who is asked
     * @param aim chance of success that is aimed at; 0.75 keeps practice brisk (Pelánek 2016, sec. 4, from memory)
     * @param notNow what was asked of late
     * @return the item; empty where none is left
     */
    public Optional<Item> next(TraineeModel trainee, double aim, Set<Task> notNow) {
        Item best = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (Item item : items.values()) {
            double chance = Elo.chance(
                    trainee.ability(item.kind()).logits(), item.difficulty().logits());
            double miss = Math.abs(chance - aim);
            if (!notNow.contains(item.task()) && miss < nearest) {
                best = item;
                nearest = miss;
            }
        }
        return Optional.ofNullable(best);
    }
}
