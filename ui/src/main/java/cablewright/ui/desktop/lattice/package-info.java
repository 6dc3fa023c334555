/** The lattice diagram on the screen, under any trace of a cable that may be seen. */
package cablewright.ui.desktop.lattice;
