/** Checks of arguments for the whole program, with one wording for every refusal. */
package cablewright.simulator.check;
