/** An examiner's key: made, shown, backed up, restored. */
package cablewright.ui.desktop.exam.key;
