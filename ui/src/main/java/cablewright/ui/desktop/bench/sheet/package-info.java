/** A cable type of the user's own, fitted to a maker's data sheet. */
package cablewright.ui.desktop.bench.sheet;
