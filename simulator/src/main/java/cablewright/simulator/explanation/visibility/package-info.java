/** Whether an event can be seen at given settings, from which end, why not, and which setting would show it. */
package cablewright.simulator.explanation.visibility;
