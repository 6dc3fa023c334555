/**
 * The demonstrations as people meet them: a question with answers, what can be set, and the figure that follows. Nothing here
 * knows a window.
 */
package cablewright.ui.demonstrations;
