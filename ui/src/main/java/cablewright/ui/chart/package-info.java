/**
 * The arithmetic of drawing: which distance is at which pixel, where axis marks stand, what is left of a long trace in a
 * narrow picture. Knows no toolkit, so that window, picture file and terminal draw alike.
 */
package cablewright.ui.chart;
