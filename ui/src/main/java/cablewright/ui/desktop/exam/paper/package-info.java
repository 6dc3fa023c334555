/** Sealing a paper. */
package cablewright.ui.desktop.exam.paper;
