/**
 * What an attempt teaches: for each finding the facts of the trace that the trainee had before the eyes. Numbers only; words
 * are made by the screens.
 */
package cablewright.lessons.feedback;
