// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;

/**
 * One page of the window. What it shows is made when it is first opened, and stays while others are open.
 *
 * @param id its name; texts of the desktop call it {@code window.<id>}, and {@code window.<id>.name} with its key
 * @param content makes what it shows
 */
record Page(String id, Supplier<Content> content) {

    /** What a page shows. */
    interface Content {

        /** Returns the node to lay out. */
        Node node();

        /** Puts the focus where work begins. */
        void start();

        /** Returns what a copied picture shows. */
        Node picture();

        /**
         * What becomes of a file that is opened or dropped while this page is shown; empty where the window opens it as a
         * lesson to practise.
         */
        default Optional<Consumer<Path>> files() {
            return Optional.empty();
        }
    }
}
