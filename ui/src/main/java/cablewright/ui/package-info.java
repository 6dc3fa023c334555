/** How people meet the simulator and the lessons: the desktop, the command line and printed pages. */
package cablewright.ui;
