/**
 * What a trace alone can say: distances, reflections, impedances. Nothing here knows the cable.
 *
 * <p>Decisions: <b>candidates are found on a sharpened trace.</b> {@link cablewright.simulator.reading.CandidateEvents} takes off the
 * outgoing wave, divides the stimulus out (Wiener), searches with matched filters at a threshold that noise passes at a stated rate,
 * and reads each site off the trace as a person does. Taking echoes off one by one, the strongest first, was tried and lost: no form
 * fits a real echo to the last, and the residue bred chains of false ones (4 to 11 a trace). Measured on 1,000 generated cables at
 * settings drawn from those permitted (seeds 1000 to 1999; tuned on 0 to 399): it finds 94.7 % of the places that are clear, 73 % of
 * the marginal, 20 % of the hidden, with 0.06 false alarms a trace and 0.8 ghosts, which look like events; half of the distances are
 * within 0.17 pulse widths, 19 of 20 within 0.68; 93 % within twice the stated uncertainty. Of the clear ones missed, most are small
 * and within two widths of a strong one. {@code mvn -q -Preading -DskipTests -pl lessons -am verify -Dcables=1000} measures it again.
 *
 * <p><b>Two ends are laid over each other by time, not by distance</b>, so that a wrong velocity moves nothing; with a known length a
 * place follows from its share of the travel time ({@link cablewright.simulator.reading.MergedReading}).
 */
package cablewright.simulator.reading;
