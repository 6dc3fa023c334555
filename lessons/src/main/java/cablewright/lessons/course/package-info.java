/**
 * What a lesson has beside its exercises: its aim, what to know first, live figures, the card to print, the notes of the instructor, and
 * the numbers that its texts state.
 */
package cablewright.lessons.course;
