// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.format.codec.FormatProblem;
import cablewright.lessons.format.codec.Shown;
import java.util.List;

/** A file that can't be used, with everything that is wrong with it in words. */
public final class LessonFormatException extends Exception {

    private static final long serialVersionUID = 1;

    private final String file;
    private final transient List<FormatProblem> problems;

    /**
     * Makes the exception.
     *
     * @param file name of the file
     * @param problems what is wrong, at least one
     */
    public LessonFormatException(String file, List<FormatProblem> problems) {
        super(message(file, problems));
        this.file = file;
        this.problems = List.copyOf(problems);
    }

    private static String message(String file, List<FormatProblem> problems) {
        String more = problems.size() > 1 ? " (and " + (problems.size() - 1) + " more)" : "";
        return Shown.text(file) + ": " + problems.get(0).sentence() + more;
    }

    /**
     * Returns the file's name.
     *
     * @return name as it was given
     */
    public String file() {
        return file;
    }

    /**
     * Returns all that is wrong, in the order of the file.
     *
     * @return problems, at least one
     */
    public List<FormatProblem> problems() {
        return problems == null ? List.of() : problems;
    }
}
