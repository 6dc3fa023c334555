// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

/** Whoever read the program's output has stopped: there is nothing more to do, and nothing wrong. */
public final class ReaderGone extends RuntimeException {

    private static final long serialVersionUID = 1L;
}
