/** The editor of a lesson: what is said of it, its exercises in their order, and the pages between them. */
package cablewright.ui.desktop.bench.lesson;
