/** Fields of the Bench's editors: what is typed is taken as it is typed, and what can't be is said at its field. */
package cablewright.ui.desktop.bench.form;
