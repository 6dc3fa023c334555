/**
 * Whether an event can be seen at given settings, from which end, why not, and which setting would show it.
 *
 * <p>Decision: <b>visibility is simulated.</b> Contrast is the difference of the trace with and without the event, as the converter
 * clips it. Clutter is how far the trace without the event swings in the event's window; it stands in for each neighbour's own
 * difference, since undoing an event in front changes the height of all that lies behind it.
 */
package cablewright.simulator.explanation.visibility;
