/** What a trace alone can say: distances, reflections, impedances. Nothing here knows the cable. */
package cablewright.simulator.reading;
