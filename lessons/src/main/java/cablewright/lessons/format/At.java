// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

/** A place in a file, told as people write it: {@code cable.runs[0].lengthMetres}. */
record At(String path) {

    static final At ROOT = new At("");

    At field(String name) {
        return new At(path.isEmpty() ? Shown.text(name) : path + "." + Shown.text(name));
    }

    At entry(int index) {
        return new At(path + "[" + index + "]");
    }
}
