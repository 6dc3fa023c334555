/** Turns findings, kinds, reasons and numbers into plain English. Knows no screen: terminal and command line use it too. */
package cablewright.ui.words;
