/** Quantities as people write and read them; everywhere else in the program they are plain SI numbers. */
package cablewright.ui.quantity;
