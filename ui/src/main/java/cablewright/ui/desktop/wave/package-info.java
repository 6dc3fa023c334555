// SPDX-License-Identifier: Apache-2.0
/** The wave on its way along the cable: computed once, then played, stopped, scrubbed and stepped. */
package cablewright.ui.desktop.wave;
