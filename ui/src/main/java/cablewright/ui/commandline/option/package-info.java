/** Options that commands share: quantities with units, line, stimulus and receiver. */
package cablewright.ui.commandline.option;
