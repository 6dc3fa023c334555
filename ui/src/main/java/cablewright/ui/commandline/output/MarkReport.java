// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.lessons.feedback.Feedback;
import cablewright.lessons.feedback.FindingReasons;
import cablewright.lessons.marking.MarkSheet;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.drawing.text.TerminalStyle;
import cablewright.ui.words.FindingText;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.Words;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/** Marked attempts, written for people or for other programs. */
public final class MarkReport {

    private static final TerminalStyle UNICODE = new TerminalStyle(true, false);

    private final List<Marked> all;
    private final Words words;

    public MarkReport(List<Marked> all, Words words) {
        this.all = List.copyOf(all);
        this.words = words;
    }

    private List<FindingText> findings(Marked marked) {
        List<FindingReasons> reasons = Feedback.of(marked.exercise(), marked.sheet(), LineEnd.NEAR, () -> false);
        return new FindingWords(words, marked.exercise(), reasons).tell(marked.sheet());
    }

    public String text() {
        StringBuilder out = new StringBuilder();
        for (Marked marked : all) {
            MarkSheet sheet = marked.sheet();
            out.append(out.length() == 0 ? "" : "\n");
            out.append(words.texts()
                            .sibling(RootCommand.MESSAGES)
                            .say(
                                    "mark.summary",
                                    sheet.attempt().trainee(),
                                    marked.exercise().title(),
                                    FindingWords.marks(sheet.marks()),
                                    FindingWords.marks(sheet.maximum()),
                                    sheet.needlessDigs(),
                                    sheet.damageLeft(),
                                    sheet.damageMissed(),
                                    FindingWords.marks(sheet.hintCostMarks())))
                    .append('\n');
            findings(marked).forEach(finding -> out.append(line(finding)));
        }
        return out.toString();
    }

    private static String line(FindingText finding) {
        String marks = finding.marks().isEmpty() ? "" : " [" + finding.marks() + "]";
        String letter = finding.letter().map(l -> l + "  ").orElse("");
        return "  " + outcome(finding) + "  " + letter + finding.title() + marks + ": " + finding.why() + "\n";
    }

    private static String outcome(FindingText finding) {
        return finding.outcome().name().toLowerCase(Locale.ROOT);
    }

    public String csv() {
        Table table = new Table(
                "file",
                "trainee",
                "exercise",
                "marks",
                "maximum",
                "needless_digs",
                "damage_left",
                "damage_missed",
                "hint_cost_marks");
        for (Marked marked : all) {
            MarkSheet sheet = marked.sheet();
            table.add(
                    marked.file().toString(),
                    sheet.attempt().trainee(),
                    sheet.exerciseId(),
                    Double.toString(sheet.marks()),
                    Double.toString(sheet.maximum()),
                    Integer.toString(sheet.needlessDigs()),
                    Integer.toString(sheet.damageLeft()),
                    Integer.toString(sheet.damageMissed()),
                    Double.toString(sheet.hintCostMarks()));
        }
        return table.csv();
    }

    public String json() {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.useDefaultPrettyPrinter();
            json.writeStartArray();
            for (Marked marked : all) {
                write(json, marked);
            }
            json.writeEndArray();
        } catch (IOException e) {
            throw new UncheckedIOException("JSON can't be written in memory", e);
        }
        return out.append('\n').toString();
    }

    private void write(JsonGenerator json, Marked marked) throws IOException {
        MarkSheet sheet = marked.sheet();
        json.writeStartObject();
        json.writeStringField("file", marked.file().toString());
        json.writeStringField("trainee", sheet.attempt().trainee());
        json.writeStringField("exercise", sheet.exerciseId());
        json.writeNumberField("marks", sheet.marks());
        json.writeNumberField("maximum", sheet.maximum());
        json.writeNumberField("needless_digs", sheet.needlessDigs());
        json.writeNumberField("damage_left", sheet.damageLeft());
        json.writeNumberField("damage_missed", sheet.damageMissed());
        json.writeNumberField("hint_cost_marks", sheet.hintCostMarks());
        json.writeArrayFieldStart("findings");
        List<FindingText> findings = findings(marked);
        for (int i = 0; i < findings.size(); i++) {
            FindingText finding = findings.get(i);
            json.writeStartObject();
            json.writeStringField(
                    "finding", kebab(sheet.findings().get(i).getClass().getSimpleName()));
            json.writeStringField("letter", finding.letter().orElse(""));
            json.writeStringField("outcome", outcome(finding));
            json.writeStringField("title", UNICODE.plain(finding.title()));
            json.writeStringField("marks", finding.marks());
            json.writeStringField("why", UNICODE.plain(finding.why()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static String kebab(String name) {
        return name.replaceAll("([a-z])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }
}
