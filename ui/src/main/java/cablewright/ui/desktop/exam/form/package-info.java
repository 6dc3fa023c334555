/** What the forms of exams are made of: cards, fields for files, fields with a name. */
package cablewright.ui.desktop.exam.form;
