// SPDX-License-Identifier: Apache-2.0
/** Something to draw with: {@code Pen}, what it writes to (PNG, SVG, PDF), its colours and outlines. */
package cablewright.ui.drawing.pen;
