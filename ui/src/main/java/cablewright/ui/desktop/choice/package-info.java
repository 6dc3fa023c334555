// SPDX-License-Identifier: Apache-2.0
/** Lists to choose from: in groups, with symbols, and found by typing the beginning of a name. */
package cablewright.ui.desktop.choice;
