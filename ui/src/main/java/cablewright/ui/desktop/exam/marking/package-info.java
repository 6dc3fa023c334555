/** Marking a class. */
package cablewright.ui.desktop.exam.marking;
