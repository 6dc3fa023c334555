// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One of the shapes that a value of a sealed family may have in a file.
 *
 * @param word what the field "kind" says
 * @param type the record whose components are the other fields
 * @param fits which values of the family go by this word
 * @param otherwise what to do where a value that was read goes by another word
 * @param disassembled makes that record of a value
 * @param made makes a value of that record
 */
record Variant(
        String word,
        Class<? extends Record> type,
        Predicate<Object> fits,
        String otherwise,
        Function<Object, Object> disassembled,
        Function<Object, Object> made) {

    static Variant of(String word, Class<? extends Record> type) {
        return only(word, type, value -> true, "");
    }

    static Variant only(String word, Class<? extends Record> type, Predicate<Object> fits, String otherwise) {
        return new Variant(
                word,
                type,
                value -> type.isInstance(value) && fits.test(value),
                otherwise,
                Function.identity(),
                Function.identity());
    }
}
