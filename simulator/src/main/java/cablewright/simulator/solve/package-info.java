/**
 * Where the reflection is computed: the recursion from the load to the port, and the cache of propagation.
 */
package cablewright.simulator.solve;
