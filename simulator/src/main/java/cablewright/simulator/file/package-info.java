/**
 * Files of strangers: only plain files are opened, and text is read line by line within bounds, so that no file can stop the
 * program, fill its memory or hide a fault.
 */
package cablewright.simulator.file;
