/** A measured line on the screen: a sweep or a trace from a file, read with the same tracks as a simulated one. */
package cablewright.ui.desktop.measured;
