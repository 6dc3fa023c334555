// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import java.util.List;

/** The input was wrong. Each problem is one sentence that says where, what, and what is allowed. */
public final class InputProblem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;

    public InputProblem(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    public InputProblem(String problem) {
        this(List.of(problem));
    }

    public List<String> problems() {
        return problems;
    }
}
