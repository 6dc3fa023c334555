/** Edits of a cable, its record, its exercise and its lesson: each takes the old value and returns the new one. */
package cablewright.lessons.bench.edit;
