// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import java.util.Optional;

/** A clipboard that holds text. */
public interface TextClipboard {

    /**
     * Puts text on it.
     *
     * @param text the text
     */
    void put(String text);

    /**
     * Takes the text from it.
     *
     * @return the text; empty where it holds none
     */
    Optional<String> get();
}
