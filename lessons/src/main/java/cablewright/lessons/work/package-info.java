/** What is kept for a trainee from one run to the next: unfinished work, and the lessons in a folder of one's own. */
package cablewright.lessons.work;
