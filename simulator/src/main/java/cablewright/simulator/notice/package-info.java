/** Remarks that a result carries when a model is used near or outside the range where it holds. */
package cablewright.simulator.notice;
