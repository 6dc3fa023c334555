/** The editor of the as-built record: made from the cable, spoilt as drawings are, and held against the cable. */
package cablewright.ui.desktop.bench.record;
