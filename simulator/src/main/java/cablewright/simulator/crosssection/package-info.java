/**
 * Cross-sections of cable: geometry and materials in, per-metre series impedance and shunt admittance out, each an exact causal function of
 * complex frequency.
 *
 * <p>Decisions: <b>a pinch is a smaller circle touching the far side</b> of the outer conductor, so the exact formula of the eccentric
 * coax serves for it. Real dents are rounder or sharper; depth is a model parameter. <b>Off-centre drop coax shows a drift</b>: with a
 * foil shield thinner than its skin depth, current spreads round the shield at low frequency, so the drift just after the pulse is
 * twice that of the centred cable (2e-3 of the pulse, 1e-3 after 20 ns). Hardline shows less than 1e-3 throughout.
 */
package cablewright.simulator.crosssection;
