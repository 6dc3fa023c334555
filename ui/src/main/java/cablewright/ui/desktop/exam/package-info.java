/** The pages of exams in the Class book, and the way between them. */
package cablewright.ui.desktop.exam;
