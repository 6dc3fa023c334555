/** Sealed papers and answers to them, as values: what is in their files. */
package cablewright.lessons.exam.paper;
