/**
 * Cross-sections of cable: geometry and materials in, per-metre series impedance and shunt admittance out, each an
 * exact causal function of complex frequency.
 */
package cablewright.simulator.crosssection;
