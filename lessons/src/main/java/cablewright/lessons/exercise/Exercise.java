// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exercise;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.check.Above;
import cablewright.simulator.check.Entries;
import cablewright.simulator.check.Id;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import cablewright.simulator.instrument.Instrument;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line to be read: what is said about it, what is truly there, what may be set, and what is shown after commit.
 *
 * @param id name within its lesson
 * @param title one line; gives nothing away
 * @param brief who called, what they saw, what the record says, in Markdown
 * @param cautions what can hurt someone at such work; always with {@link Caution#LOCAL_CODES}, which comes last
 * @param cable what is truly there, with at most 200 events; shown only after commit
 * @param record what the drawings say
 * @param instrument what is used
 * @param start what is set when the exercise opens; permitted
 * @param permitted what may be changed
 * @param toleranceMetres how near a place must be to count in full, above 0 to 10000 [m]; absent for the usual: the
 *     larger of half of the shortest permitted pulse, 1 % of the distance, 0.3 m
 * @param hints hints in order, at most 10
 * @param explanation what to see and why, in Markdown, shown after commit
 * @param prediction a question that is asked before the trace is shown
 * @param noiseSeed seed of the receiver's noise
 * @param endIsGiven whether the end of the line is known and need not be flagged
 * @param rulings how the instructor wants single events marked, at most one for each event of the cable
 */
public record Exercise(
        @Id String id,
        @Text String title,
        @Lines String brief,
        @Entries(least = 1, most = 7, distinct = true) List<Caution> cautions,
        Cable cable,
        AsBuiltRecord record,
        Instrument instrument,
        Start start,
        Permitted permitted,
        @Above(floor = 0, most = 10_000) OptionalDouble toleranceMetres,
        @Entries(most = 10) List<Hint> hints,
        @Lines String explanation,
        Optional<Prediction> prediction,
        long noiseSeed,
        boolean endIsGiven,
        @Entries(most = Exercise.MOST_EVENTS) List<EventRuling> rulings)
        implements ReadingTask {

    /** Most events on the cable of an exercise: each is looked for at every permitted setting. */
    public static final int MOST_EVENTS = 200;

    /** Copies the lists and refuses an exercise that can't be set. */
    public Exercise {
        Require.components(
                Exercise.class,
                id,
                title,
                brief,
                cautions,
                cable,
                record,
                instrument,
                start,
                permitted,
                toleranceMetres,
                hints,
                explanation,
                prediction,
                noiseSeed,
                endIsGiven,
                rulings);
        cautions = List.copyOf(cautions);
        if (cautions.get(cautions.size() - 1) != Caution.LOCAL_CODES) {
            throw new IllegalArgumentException("cautions end with " + cautions.get(cautions.size() - 1)
                    + "; they must end with " + Caution.LOCAL_CODES);
        }
        Require.between("the number of events of the cable", cable.events().size(), 0, MOST_EVENTS);
        if (!permitted.allows(start.settings(), start.end())) {
            throw new IllegalArgumentException(
                    "start is not permitted; each of its settings must be among the choices of permitted");
        }
        hints = List.copyOf(hints);
        rulings = List.copyOf(rulings);
        if (rulings.stream().map(EventRuling::eventId).distinct().count() < rulings.size()) {
            throw new IllegalArgumentException("rulings has two for one event; give each event at most one");
        }
        for (EventRuling ruling : rulings) {
            if (cable.event(ruling.eventId()).isEmpty()) {
                throw new IllegalArgumentException("rulings has one for \"" + ruling.eventId()
                        + "\", which is no event of the cable; name one of its events, or remove the ruling");
            }
        }
    }

    /**
     * Makes an exercise of which every event is marked by the usual rules.
     *
     * @param id name within its lesson
     * @param title one line
     * @param brief what the trainee reads first
     * @param cautions what can hurt someone
     * @param cable what is truly there
     * @param record what the drawings say
     * @param instrument what is used
     * @param start what is set when the exercise opens
     * @param permitted what may be changed
     * @param toleranceMetres how near a place must be to count in full [m]
     * @param hints hints in order
     * @param explanation what to see and why
     * @param prediction a question that is asked before the trace is shown
     * @param noiseSeed seed of the receiver's noise
     * @param endIsGiven whether the end of the line is known
     */
    public Exercise(
            String id,
            String title,
            String brief,
            List<Caution> cautions,
            Cable cable,
            AsBuiltRecord record,
            Instrument instrument,
            Start start,
            Permitted permitted,
            OptionalDouble toleranceMetres,
            List<Hint> hints,
            String explanation,
            Optional<Prediction> prediction,
            long noiseSeed,
            boolean endIsGiven) {
        this(
                id,
                title,
                brief,
                cautions,
                cable,
                record,
                instrument,
                start,
                permitted,
                toleranceMetres,
                hints,
                explanation,
                prediction,
                noiseSeed,
                endIsGiven,
                List.of());
    }

    /**
     * Returns how the instructor wants an event marked.
     *
     * @param eventId the event
     * @return the ruling; empty where the usual rules hold
     */
    public Optional<EventRuling> ruling(String eventId) {
        return rulings.stream()
                .filter(ruling -> ruling.eventId().equals(eventId))
                .findFirst();
    }

    /**
     * Returns what a number of hints cost.
     *
     * @param taken how many were taken, in order
     * @return marks
     */
    public double hintCostMarks(int taken) {
        return hints.stream().limit(taken).mapToDouble(Hint::costMarks).sum();
    }
}
