// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

/**
 * A file from the folder of answers.
 *
 * @param name its name
 * @param bytes what it holds
 */
public record AnswerFile(String name, byte[] bytes) {

    /** Copies the bytes. */
    public AnswerFile {
        bytes = bytes.clone();
    }

    @Override
    public byte[] bytes() {
        return bytes.clone();
    }
}
