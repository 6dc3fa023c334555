/**
 * Marking a class: sealed answers are opened, checked, marked and put together. What can't be used is named and set aside, the
 * rest is marked. Knows no screen.
 */
package cablewright.lessons.exam.result;
