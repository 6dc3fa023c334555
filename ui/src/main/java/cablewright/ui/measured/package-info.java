/** Files of measurements, opened so that a reflectometer's reading can be taken of them. */
package cablewright.ui.measured;
