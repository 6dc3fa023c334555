// SPDX-License-Identifier: Apache-2.0
/** Something to draw with, and the kinds of picture file. */
package cablewright.ui.drawing.pen;
