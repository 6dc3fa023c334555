/** The editor of an exercise: what is told, what may be set, hints, question, explanation, and what all of it asks for. */
package cablewright.ui.desktop.bench.exercise;
