/**
 * Conditions of the line over a stretch: each a function from cross-section to cross-section, one record and one visitor
 * method each.
 */
package cablewright.simulator.cable.condition;
