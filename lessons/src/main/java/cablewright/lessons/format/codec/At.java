// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

/**
 * A place in a file, as people write it: {@code cable.runs[0].lengthMetres}.
 *
 * @param path the place; empty for the whole file
 */
public record At(String path) {

    /** The whole file. */
    public static final At ROOT = new At("");

    /** Returns the place of a field of the object here. */
    public At field(String name) {
        return new At(path.isEmpty() ? Shown.text(name) : path + "." + Shown.text(name));
    }

    /** Returns the place of an entry of the list here. */
    public At entry(int index) {
        return new At(path + "[" + index + "]");
    }
}
