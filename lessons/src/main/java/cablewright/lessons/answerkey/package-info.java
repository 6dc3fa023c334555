/**
 * What an exercise asks for: the events that a trainee can see at some permitted setting, where, and whether each belongs.
 */
package cablewright.lessons.answerkey;
