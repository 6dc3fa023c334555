// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.exam.paper.ExamAnswers;

/**
 * Answers that opened and may be marked.
 *
 * @param file name of their file
 * @param receipt receipt of that file
 * @param answers the answers
 */
record OpenedAnswers(String file, String receipt, ExamAnswers answers) {}
