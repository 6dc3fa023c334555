/** The fields of an event that an instructor can change: meaning, unit, range and the event that follows. */
package cablewright.lessons.bench.field;
