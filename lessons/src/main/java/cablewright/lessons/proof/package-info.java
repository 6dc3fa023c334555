/**
 * Proves that an exercise is fit to set: that what it asks for can be seen, that its answer is the only one, that who reads the trace
 * well earns every mark, and that the numbers in its texts are right.
 */
package cablewright.lessons.proof;
