// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Lists in which one entry is put elsewhere, taken away or changed. */
public final class Order {

    private Order() {}

    /**
     * Swaps an entry with its neighbour.
     *
     * @param list the list
     * @param index its number, from 0
     * @param by −1 for the one before, 1 for the one behind
     * @param <T> what the entries are
     * @return the list; as it was where there is no such neighbour
     */
    public static <T> List<T> moved(List<T> list, int index, int by) {
        int to = index + by;
        if (index < 0 || index >= list.size() || to < 0 || to >= list.size()) {
            return list;
        }
        List<T> copy = new ArrayList<>(list);
        Collections.swap(copy, index, to);
        return copy;
    }

    /**
     * Takes an entry away.
     *
     * @param list the list
     * @param index its number, from 0
     * @param <T> what the entries are
     * @return the list without it
     */
    public static <T> List<T> without(List<T> list, int index) {
        List<T> copy = new ArrayList<>(list);
        copy.remove(index);
        return copy;
    }

    /**
     * Adds an entry at the end.
     *
     * @param list the list
     * @param entry the entry
     * @param <T> what the entries are
     * @return the list with it
     */
    public static <T> List<T> with(List<T> list, T entry) {
        List<T> copy = new ArrayList<>(list);
        copy.add(entry);
        return copy;
    }

    /**
     * Puts another entry in the place of one.
     *
     * @param list the list
     * @param index its number, from 0
     * @param entry the entry in its place
     * @param <T> what the entries are
     * @return the list with it
     */
    public static <T> List<T> replaced(List<T> list, int index, T entry) {
        List<T> copy = new ArrayList<>(list);
        copy.set(index, entry);
        return copy;
    }
}
