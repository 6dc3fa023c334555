/** The lesson home: where a trainee goes on, and what is kept from one run to the next. */
package cablewright.ui.desktop.home;
