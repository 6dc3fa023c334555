/** Measured speed: what a person waits for at the screen, and how the solver compares with the textbook's chain matrix. */
package cablewright.simulator.benchmark;
