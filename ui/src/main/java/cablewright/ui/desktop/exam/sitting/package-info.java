/** Sitting an exam: begun, read, handed in. */
package cablewright.ui.desktop.exam.sitting;
