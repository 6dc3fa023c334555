/** The one document that all panes of the Bench read and change. */
package cablewright.ui.desktop.bench.document;
