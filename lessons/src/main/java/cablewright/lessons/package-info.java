/** What a trainee is asked: exercises, marking, practice, exams, records and their files. Knows nothing of screens. */
package cablewright.lessons;
