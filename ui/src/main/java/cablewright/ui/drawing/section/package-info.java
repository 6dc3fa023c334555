// SPDX-License-Identifier: Apache-2.0
/** Cross-sections of cables, drawn to scale. */
package cablewright.ui.drawing.section;
