// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

/**
 * One thing that is wrong with a file.
 *
 * @param path where, such as "cable.runs[0].lengthMetres"; empty where it is the file as a whole
 * @param fault what is there and why it can't be, such as "is -3"; names the value, shortened
 * @param remedy what is allowed, or what to do
 */
public record FormatProblem(String path, String fault, String remedy) {

    /**
     * Describes the problem in one sentence.
     *
     * @return place, value, what is allowed
     */
    public String sentence() {
        String start = path.isEmpty() ? "" : path + " ";
        return start + fault + "; " + remedy + ".";
    }
}
