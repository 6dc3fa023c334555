/** Touchstone files, versions 1 and 2: reading and writing scattering parameters against frequency. */
package cablewright.simulator.exchange.touchstone;
