// SPDX-License-Identifier: Apache-2.0
/** Figures of demonstrations: values, their drawing and their numbers. */
package cablewright.ui.drawing.figure;
