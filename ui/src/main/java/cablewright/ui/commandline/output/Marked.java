// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.marking.MarkSheet;
import java.nio.file.Path;

/**
 * A marked attempt and where it came from.
 *
 * @param file the file
 * @param exercise the exercise
 * @param sheet the marks
 */
public record Marked(Path file, Exercise exercise, MarkSheet sheet) {}
