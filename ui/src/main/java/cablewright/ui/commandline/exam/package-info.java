// SPDX-License-Identifier: Apache-2.0
/** The commands of exams: keys, sealed papers, sittings and marks. */
package cablewright.ui.commandline.exam;
