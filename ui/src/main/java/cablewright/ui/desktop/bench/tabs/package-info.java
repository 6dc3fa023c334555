/** The editors as tabs beside the Bench's inspector. */
package cablewright.ui.desktop.bench.tabs;
