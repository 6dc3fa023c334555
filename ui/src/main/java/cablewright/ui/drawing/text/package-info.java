// SPDX-License-Identifier: Apache-2.0
/** Traces and tracks in characters, for terminals. */
package cablewright.ui.drawing.text;
