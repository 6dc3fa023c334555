// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

/** Exit codes of the program. */
public final class ExitCode {

    /** All was done. */
    public static final int DONE = 0;

    /** The input was wrong, which was said in words. */
    public static final int INPUT_WRONG = 1;

    /** The command was not one that the program has, or lacked something. */
    public static final int USAGE = 2;

    /** A fault of the program itself; a report lies in a file. */
    public static final int FAULT = 70;

    private ExitCode() {}
}
