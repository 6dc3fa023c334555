/** Both families of events at once, for whoever treats any event. */
package cablewright.simulator.cable.event;
