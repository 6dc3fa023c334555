/** Paper: worksheets for trainees and answer sheets for instructors, as PDF and on a printer. */
package cablewright.ui.print;
