/** Surface impedance of conductors: round wires, clad wires, tubes, foil and braid. */
package cablewright.simulator.crosssection.surface;
