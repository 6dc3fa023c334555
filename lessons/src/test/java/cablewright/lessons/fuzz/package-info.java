/** Hostile input for every reader of files: a bounded run with the tests, a long one by command ({@link FuzzRun}). */
package cablewright.lessons.fuzz;
