/** Voltage along the line: where the wave is, frame by frame, between the port and every far end. */
package cablewright.simulator.field;
