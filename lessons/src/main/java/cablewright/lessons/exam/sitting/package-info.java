/**
 * Sitting an exam: answers while they are given, kept on disk at every change, and handed in sealed. Knows no screen and no
 * cable.
 */
package cablewright.lessons.exam.sitting;
