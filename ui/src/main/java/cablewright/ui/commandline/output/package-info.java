/** What commands write: tables, reports, pictures and traces. */
package cablewright.ui.commandline.output;
