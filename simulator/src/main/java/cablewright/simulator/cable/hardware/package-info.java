/**
 * Components in the line, each at one place: hardware, joints, branches and local faults, one record and one visitor method each.
 *
 * <p>Limits of the models: a splitter's isolation is ideal and an amplifier's gain is not modelled.
 */
package cablewright.simulator.cable.hardware;
