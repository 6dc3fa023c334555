/**
 * The Bench without its screen: a lesson being written as one immutable document, every edit as a pure function, the fields
 * of each event with their limits, templates to start from, the record made from the cable and spoilt, history, recovery.
 */
package cablewright.lessons.bench;
