/** The editor of an exercise: texts, permitted settings, hints, question, explanation, and what all of it asks for. */
package cablewright.ui.desktop.bench.exercise;
