/** Trying an exercise as a trainee would, within the Bench and without leaving a trace in anybody's log. */
package cablewright.ui.desktop.bench.trial;
