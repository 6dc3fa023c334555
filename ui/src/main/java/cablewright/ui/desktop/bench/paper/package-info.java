/** What leaves the Bench on paper and as a picture: worksheets, answer sheets, and the tracks. */
package cablewright.ui.desktop.bench.paper;
