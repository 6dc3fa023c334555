/** The as-built record: what the drawing says is in the line. */
package cablewright.lessons.exercise.asbuilt;
