// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import java.nio.file.Path;

/**
 * Answers that were handed in.
 *
 * @param file the sealed file
 * @param receipt its receipt
 */
public record HandedIn(Path file, String receipt) {}
