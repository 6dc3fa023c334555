/**
 * Which event caused each bump of a trace: wave paths through the scattering tree, matched to the extrema that stand out
 * of the noise.
 */
package cablewright.simulator.explanation.attribution;
