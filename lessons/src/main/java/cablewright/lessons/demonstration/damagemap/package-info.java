/** How far, how soft and how deep a damage may be before it no longer shows: the numbers of a map. */
package cablewright.lessons.demonstration.damagemap;
