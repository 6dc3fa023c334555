/** Figures with labelled axes, as values: drawn by any pen on screen, PNG, SVG or PDF, and written as data. */
package cablewright.ui.figure;
