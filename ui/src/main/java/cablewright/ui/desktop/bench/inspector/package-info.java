/** The column beside the tracks: sliders, derived values and visibility of the cable or of one event. */
package cablewright.ui.desktop.bench.inspector;
