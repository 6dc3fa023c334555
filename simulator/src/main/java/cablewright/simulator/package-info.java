/** What a cable does: physics, circuit, instrument, reading and exchange formats. Knows nothing of lessons or screens. */
package cablewright.simulator;
