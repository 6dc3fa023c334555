// SPDX-License-Identifier: Apache-2.0
/** Drawing on a JavaFX canvas. */
package cablewright.ui.drawing.screen;
