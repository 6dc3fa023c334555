// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.paper;

import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.ReadingTask;
import cablewright.lessons.exercise.Start;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.simulator.cable.LineEnd;
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
 * One line to be read in an exam: all that an exercise shows before commit, and what each permitted end shows in place of the
 * cable.
 *
 * @param id name within the paper, which says nothing
 * @param title one line
 * @param brief who called and what they saw, in Markdown
 * @param cautions what can hurt someone at such work; local codes last
 * @param record what the drawings say; its items have names of this paper
 * @param instrument what is used
 * @param start what is set when the task opens; permitted
 * @param permitted what may be changed
 * @param toleranceMetres how near a place must be to count in full, above 0 [m]; absent for the usual
 * @param question a question that is asked before the trace is shown
 * @param noiseSeed seed of the receiver's noise, drawn for this paper
 * @param endIsGiven whether the end of the line need not be flagged
 * @param ports what each permitted end shows
 */
public record PaperItem(
        @Id String id,
        @Text String title,
        @Lines String brief,
        @Entries(least = 1, most = 7, distinct = true) List<Caution> cautions,
        AsBuiltRecord record,
        Instrument instrument,
        Start start,
        Permitted permitted,
        @Above(floor = 0, most = 10_000) OptionalDouble toleranceMetres,
        Optional<PaperQuestion> question,
        long noiseSeed,
        boolean endIsGiven,
        @Entries(least = 1, most = 2) List<PortSamples> ports)
        implements ReadingTask {

    /** Copies the lists and checks that each permitted end has its response. */
    public PaperItem {
        Require.components(
                PaperItem.class,
                id,
                title,
                brief,
                cautions,
                record,
                instrument,
                start,
                permitted,
                toleranceMetres,
                question,
                noiseSeed,
                endIsGiven,
                ports);
        cautions = List.copyOf(cautions);
        if (cautions.get(cautions.size() - 1) != Caution.LOCAL_CODES) {
            throw new IllegalArgumentException("cautions must end with " + Caution.LOCAL_CODES);
        }
        if (!permitted.allows(start.settings(), start.end())) {
            throw new IllegalArgumentException("start is not permitted; each of its settings must be a choice");
        }
        ports = List.copyOf(ports);
        List<LineEnd> ends = ports.stream().map(PortSamples::end).toList();
        if (!ends.equals(permitted.ends())) {
            throw new IllegalArgumentException("ports has the ends " + ends + "; it needs those that are permitted, "
                    + permitted.ends() + ", in their order");
        }
        for (PortSamples port : ports) {
            if (port.referenceOhms() != instrument.sourceOhms()) {
                throw new IllegalArgumentException("ports has a reference of " + port.referenceOhms()
                        + " ohms; it must be the instrument's " + instrument.sourceOhms());
            }
        }
    }

    /**
     * Returns what an end shows.
     *
     * @param end a permitted end
     * @return its port
     */
    public SampledPort port(LineEnd end) {
        return ports.stream()
                .filter(port -> port.end() == end)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the paper has no response for the " + end))
                .port();
    }
}
