// SPDX-License-Identifier: Apache-2.0
/** Slim rows and columns of controls: what does not fit folds into a menu, so that nothing is ever cut off. */
package cablewright.ui.desktop.strip;
