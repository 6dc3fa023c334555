/** Netlists for general circuit simulators, with everything they cannot represent listed in comments. */
package cablewright.simulator.exchange.netlist;
