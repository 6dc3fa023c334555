/** Practice: a trainee reads a trace, flags what is there, commits, and only then sees the cable and why. */
package cablewright.ui.desktop.practice;
