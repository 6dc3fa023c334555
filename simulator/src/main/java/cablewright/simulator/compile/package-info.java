/**
 * From a cable in trade words to a circuit: cuts at every boundary, steps of profiles, and the events that made each element.
 *
 * <p>{@link cablewright.simulator.compile.CableCompiler} takes profiles in steps that err by less than 1e-5 of the outgoing wave in time
 * (1e-4 of Γ in a sweep; {@link cablewright.simulator.compile.ProfileSteps}), applies the conditions that overlap in the order geometry,
 * dielectric, heat, merges equal neighbours, and keeps for each piece the events that made it.
 */
package cablewright.simulator.compile;
