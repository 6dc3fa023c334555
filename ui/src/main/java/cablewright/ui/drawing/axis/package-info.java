// SPDX-License-Identifier: Apache-2.0
/** The arithmetic of axes: which distance is at which pixel, where round marks stand, what is left of a long curve in a narrow picture. */
package cablewright.ui.drawing.axis;
