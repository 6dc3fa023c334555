/** What a command runs in: streams, folder, terminal, version, exit codes and how a fault is reported. */
package cablewright.ui.commandline.environment;
