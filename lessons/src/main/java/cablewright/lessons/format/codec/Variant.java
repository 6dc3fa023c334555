// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import java.util.Optional;
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
 * @param fixed the optional field that this word demands or forbids
 */
record Variant(
        String word,
        Class<? extends Record> type,
        Predicate<Object> fits,
        String otherwise,
        Function<Object, Object> disassembled,
        Function<Object, Object> made,
        Optional<Fixed> fixed) {

    /**
     * An optional field that a word demands or forbids.
     *
     * @param component its name
     * @param isGiven whether it must be given; it must be left out if not
     */
    record Fixed(String component, boolean isGiven) {}

    static Variant of(String word, Class<? extends Record> type) {
        return only(word, type, type::isInstance, "", Optional.empty());
    }

    static Variant only(
            String word,
            Class<? extends Record> type,
            Predicate<Object> fits,
            String otherwise,
            Optional<Fixed> fixed) {
        return new Variant(
                word,
                type,
                value -> type.isInstance(value) && fits.test(value),
                otherwise,
                Function.identity(),
                Function.identity(),
                fixed);
    }
}
