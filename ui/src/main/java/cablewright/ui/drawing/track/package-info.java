// SPDX-License-Identifier: Apache-2.0
/**
 * The three tracks, drawn once for window, paper, picture and terminal: one painter each for trace, flags, record and cable, on
 * the strip that a {@code TrackSheet} lays out. A painter is made for one drawing and forgotten.
 */
package cablewright.ui.drawing.track;
