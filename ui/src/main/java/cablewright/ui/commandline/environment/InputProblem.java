// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import java.util.List;

/** The input was wrong. Each problem is one sentence that says where, what, and what is allowed. */
public final class InputProblem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;
    private final transient Object[] arguments;
    private final boolean isKey;

    private InputProblem(List<String> problems, boolean isKey, Object... arguments) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
        this.isKey = isKey;
        this.arguments = arguments;
    }

    /** Takes sentences as they are, such as those of a reader of files. */
    public InputProblem(List<String> problems) {
        this(problems, false);
    }

    /** Takes a sentence as it is. */
    public InputProblem(String problem) {
        this(List.of(problem));
    }

    /**
     * Makes a problem whose sentence stands in the command line's bundle.
     *
     * @param key the sentence's key
     * @param arguments what its places take
     * @return the problem
     */
    public static InputProblem of(String key, Object... arguments) {
        return new InputProblem(List.of(key), true, arguments);
    }

    /**
     * Returns what to say.
     *
     * @param surroundings where the program runs, which know the language
     * @return a sentence for each problem
     */
    public List<String> problems(Environment surroundings) {
        return isKey ? List.of(surroundings.say(problems.get(0), arguments)) : problems;
    }
}
