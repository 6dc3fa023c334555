/** Live figures of lesson pages: traces that the simulator draws anew while a slider moves. */
package cablewright.ui.desktop.practice.figure;
