/**
 * The scattering tree: groups of adjacent elements, each with its scattering matrix, joined by lengths of uniform line.
 *
 * <p>Decision: <b>paths run along a tree of scatterers</b>, each with its matrix at every frequency in waves of voltage, so that the
 * transmitted wave is 1 + ρ times the incident one. The sum over all paths is Γ, within 1e-11 of the recursion for branches in
 * branches, wall connections, dividers and split stretches. On a lossless line with a branch in a branch all paths add up to the trace
 * within 6e-12 of the outgoing wave; on the built-in lessons a handful explain more than 99.9999 % of the energy. A split stretch, a
 * profile and what touches at one place are one scatterer each: what happens inside them is not resolved.
 */
package cablewright.simulator.paths;
