// SPDX-License-Identifier: Apache-2.0
/** Practice in the terminal. */
package cablewright.ui.commandline.practice;
