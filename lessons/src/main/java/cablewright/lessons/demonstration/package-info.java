/**
 * Arguments that end with numbers: each demonstration takes what a person may set and gives curves and headline figures,
 * as immutable values that know no screen.
 */
package cablewright.lessons.demonstration;
