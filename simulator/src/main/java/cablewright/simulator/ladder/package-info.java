/**
 * A second engine, independent of the first: every line as a ladder of lumped parts, solved step by step in time. It shows
 * when a ladder stops being a line, and is a second opinion on the first engine where it does not.
 */
package cablewright.simulator.ladder;
