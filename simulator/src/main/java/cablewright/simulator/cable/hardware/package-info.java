/**
 * Components in the line, each at one place: hardware, joints, branches and local faults, one record and one visitor
 * method each.
 */
package cablewright.simulator.cable.hardware;
