/** What a maker's data sheet states of a cable, and how well a fit meets it. */
package cablewright.simulator.crosssection.datasheet;
