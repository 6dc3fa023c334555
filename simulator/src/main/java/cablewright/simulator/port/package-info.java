/** The port of a simulated cable: what comes back at one of its ends. */
package cablewright.simulator.port;
