/** The commands, each thin over the simulator and the lessons. */
package cablewright.ui.commandline.command;
