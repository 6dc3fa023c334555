// SPDX-License-Identifier: Apache-2.0
/** One palette for screen, paper and pictures. */
package cablewright.ui.drawing.palette;
