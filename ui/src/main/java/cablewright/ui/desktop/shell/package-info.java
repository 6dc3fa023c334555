/** The JavaFX desktop: windows, views and their view models. */
package cablewright.ui.desktop.shell;
