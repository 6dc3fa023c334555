// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the desktop. */
@FunctionalInterface
public interface DesktopOpener {

    /**
     * Opens the desktop and returns when its last window is closed.
     *
     * @param lesson the lesson's file; empty for the built-in one
     * @throws NoWindow if no window can be opened here
     */
    void open(Optional<Path> lesson) throws NoWindow;

    /** No window can be opened here. */
    final class NoWindow extends Exception {

        private static final long serialVersionUID = 1L;

        /**
         * Says why.
         *
         * @param reason the reason, part of a sentence
         */
        public NoWindow(String reason) {
            super(reason);
        }
    }
}
