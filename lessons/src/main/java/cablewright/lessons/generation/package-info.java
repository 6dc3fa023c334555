/**
 * Exercises without end: from a seed, a family of cable, kinds of event and a difficulty. None is handed out that has not
 * been checked: what it asks for can be seen, and no other answer fits the trace and the record as well.
 */
package cablewright.lessons.generation;
