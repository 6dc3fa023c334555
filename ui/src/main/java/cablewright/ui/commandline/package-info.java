/**
 * The commands of the program. They are thin: quantities are read, lessons and simulator do the work, data go to standard
 * output and remarks to standard error. Nothing here needs a display.
 */
package cablewright.ui.commandline;
