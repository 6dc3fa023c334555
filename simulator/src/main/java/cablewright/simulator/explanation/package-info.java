/**
 * What only the cable can say about its trace: how high each event should stand, whether it can be seen and why not, and
 * which paths made each bump.
 */
package cablewright.simulator.explanation;
