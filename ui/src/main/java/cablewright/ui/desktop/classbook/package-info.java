/** The class book: what trainees did, how they get on, and what goes to whom. */
package cablewright.ui.desktop.classbook;
