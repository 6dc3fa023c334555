/** What cables are made of: conductors, dielectrics, water and the rules by which they mix. Knows nothing of cables. */
package cablewright.simulator.material;
