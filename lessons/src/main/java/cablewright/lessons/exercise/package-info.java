/**
 * What a trainee is asked and what a trainee answers: lessons, exercises, as-built records, flags, attempts. Immutable
 * values only; nothing here marks, reads files or knows of screens.
 */
package cablewright.lessons.exercise;
