/**
 * The scattering tree: groups of adjacent elements, each with its scattering matrix, joined by lengths of uniform line.
 */
package cablewright.simulator.paths;
