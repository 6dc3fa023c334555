/**
 * A lesson for the system that a school runs already: questions with a picture of the trace, whose answers that system can mark by
 * itself, as Moodle XML and as a QTI 3.0 package.
 *
 * <p>Live settings are lost on the way, so each event is asked at the setting that shows it best. A place is right in the stretch that
 * marking takes for right, and the tolerance on both sides of it.
 */
package cablewright.ui.school;
