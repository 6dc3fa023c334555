// SPDX-License-Identifier: Apache-2.0
/** One painter each for trace, record and cable, on whatever a pen draws. */
package cablewright.ui.drawing.track;
