/**
 * Exercises without end: from a seed, a family of cable, kinds of event and a difficulty. None is handed out that has not
 * been checked: what it asks for can be seen, and no other answer fits the trace and the record as well.
 *
 * <p>A split and a spread pair cannot be distinguished by a trace alone, so no family of exercises has both; crosstalk tells them
 * apart. Names of exercises are opaque: the request, and with it the answer, cannot be read from them. One core makes about 105
 * exercises a second, with all that they must pass (JMH, two shared cores).
 */
package cablewright.lessons.generation;
