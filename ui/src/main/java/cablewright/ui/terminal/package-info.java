/**
 * Practice in a terminal: the same exercises and the same marking as in the window, typed line by line. Nothing here reads
 * or writes a terminal itself; lines come in and text goes out.
 */
package cablewright.ui.terminal;
