/** View models of the Bench: what is shown and what each action does, without controls. */
package cablewright.ui.desktop.bench.model;
