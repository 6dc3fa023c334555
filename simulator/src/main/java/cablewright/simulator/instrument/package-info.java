/** A reflectometer: what it sends, how its receiver and converter see what comes back, and what a person sets on it. */
package cablewright.simulator.instrument;
