/** Work beside the screen: which thread does it, and whose result counts. */
package cablewright.ui.desktop.task;
