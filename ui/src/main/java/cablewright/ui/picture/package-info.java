/** Pictures of traces without a display: as image files and as text in a terminal. */
package cablewright.ui.picture;
