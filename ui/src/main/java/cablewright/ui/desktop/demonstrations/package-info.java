/** The screen of demonstrations: a question, the class's answer, then sliders that come alive and a figure that follows. */
package cablewright.ui.desktop.demonstrations;
