/** Questions with choices, each with its reason. */
package cablewright.lessons.exercise.question;
