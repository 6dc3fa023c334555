/** The Bench: where an instructor builds a cable and a lesson, and watches the trace change. */
package cablewright.ui.desktop.bench;
