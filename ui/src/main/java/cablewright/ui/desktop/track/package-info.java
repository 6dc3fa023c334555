/** The three stacked tracks that share one distance axis: what the port shows, what the drawing says, what is there. */
package cablewright.ui.desktop.track;
