// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.visibility.Suggestion;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.words.EventWords;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.VisibilityWords;
import cablewright.ui.words.Words;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Facts about events, written for people or for other programs. */
public final class ExplanationText {

    private static final String[] COLUMNS = {
        "event",
        "kind",
        "position_m",
        "shown_m",
        "delay_s",
        "line_ohm",
        "event_ohm",
        "apparent_ohm",
        "coefficient",
        "loss_db",
        "height_v",
        "noise_v",
        "visibility",
        "reason"
    };

    private final Cable cable;
    private final List<EventFacts> facts;
    private final Map<String, Suggestion> suggestions;
    private final PathLines paths;
    private final RootCommand root;
    private final Words words;

    public ExplanationText(
            Cable cable,
            List<EventFacts> facts,
            Map<String, Suggestion> suggestions,
            PathLines paths,
            RootCommand root) {
        this.cable = cable;
        this.facts = List.copyOf(facts);
        this.suggestions = Map.copyOf(suggestions);
        this.paths = paths;
        this.root = root;
        this.words = root.words();
    }

    public String text() {
        if (facts.isEmpty()) {
            return root.say("explain.none") + "\n" + paths.text();
        }
        StringBuilder out = new StringBuilder();
        String before = "";
        for (EventFacts fact : facts) {
            if (!fact.event().id().equals(before)) {
                out.append(before.isEmpty() ? "" : "\n").append(head(fact));
                before = fact.event().id();
            }
            out.append(place(fact));
        }
        return out.append(paths.text()).toString();
    }

    private String head(EventFacts fact) {
        String ohms = fact.eventOhms().isPresent()
                ? root.say(
                        "explain.ohms",
                        Quantities.number(fact.eventOhms().getAsDouble(), 1),
                        Quantities.number(fact.soundOhms(), 1))
                : "";
        return words.kind(fact.event().kind()) + " \"" + fact.event().id() + "\": "
                + new EventWords(words).detail(fact.event()) + ohms + "\n";
    }

    private String place(EventFacts fact) {
        Quantities quantities = words.quantities();
        String loss = fact.lossDecibels().isPresent()
                ? root.say("explain.loss", Quantities.number(fact.lossDecibels().getAsDouble(), 1))
                : "";
        String coefficient = fact.coefficient().isPresent()
                ? root.say(
                        "explain.coefficient",
                        Quantities.number(fact.coefficient().getAsDouble(), 4),
                        quantities.ohms(fact.apparentOhms().getAsDouble()))
                : "";
        String where = root.say(
                "explain.place",
                quantities.length(fact.place().trueMetres(), 2),
                quantities.length(fact.place().shownMetres(), 2),
                quantities.time(fact.place().thereAndBackSeconds()),
                loss);
        String height = root.say(
                "explain.height",
                quantities.percent(fact.place().expectedVolts()),
                quantities.decibels(fact.place().expectedVolts()),
                coefficient,
                quantities.percent(fact.sight().noiseVolts()).replace("+", ""));
        return "  " + where + "\n    " + height + "\n    " + visible(fact) + "\n";
    }

    private String visible(EventFacts fact) {
        Visibility visibility = fact.place().visibility();
        String verdict = word(visibility);
        return new VisibilityWords(words, cable)
                .whyNotClear(fact.sight(), fact.place())
                .map(why -> verdict + ": " + why + better(fact))
                .orElse(verdict);
    }

    /** Which setting would show the event better. */
    private String better(EventFacts fact) {
        Suggestion suggestion = suggestions.get(fact.event().id());
        boolean place = fact.place().equals(fact.sight().best());
        if (suggestion == null || !place) {
            return "";
        }
        return "\n    "
                + root.say(
                        "explain.better",
                        words.stimulus(suggestion.settings().stimulus()),
                        suggestion.settings().averages(),
                        words.end(suggestion.end()),
                        word(suggestion.visibility()));
    }

    private String word(Visibility visibility) {
        return root.say("explain." + Words.word(visibility));
    }

    private static String number(double value) {
        return Double.toString(value);
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? Double.toString(value.getAsDouble()) : "";
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        for (EventFacts fact : facts) {
            rows.add(List.of(
                    fact.event().id(),
                    fact.event().kind().id(),
                    number(fact.place().trueMetres()),
                    number(fact.place().shownMetres()),
                    number(fact.place().thereAndBackSeconds()),
                    number(fact.soundOhms()),
                    number(fact.eventOhms()),
                    number(fact.apparentOhms()),
                    number(fact.coefficient()),
                    number(fact.lossDecibels()),
                    number(fact.place().expectedVolts()),
                    number(fact.sight().noiseVolts()),
                    Words.word(fact.place().visibility()),
                    fact.place().reason().map(Words::word).orElse("")));
        }
        return rows;
    }

    public String csv() {
        Table table = new Table(COLUMNS);
        rows().forEach(row -> table.add(row.toArray(new String[0])));
        return table.csv();
    }

    public String json() {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeStringField("cable", cable.title());
            json.writeArrayFieldStart("events");
            for (List<String> row : rows()) {
                json.writeStartObject();
                for (int i = 0; i < COLUMNS.length; i++) {
                    writeCell(json, COLUMNS[i], row.get(i));
                }
                json.writeEndObject();
            }
            json.writeEndArray();
            paths.writeTo(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("JSON can't be written in memory", e);
        }
        return out.append('\n').toString();
    }

    /** Columns with a unit, and the coefficient, hold numbers; an infinite one is left out, as JSON has none. */
    private static void writeCell(JsonGenerator json, String column, String cell) throws IOException {
        boolean numeric = column.contains("_") || column.equals("coefficient");
        if (!numeric) {
            json.writeStringField(column, cell);
        } else if (!cell.isEmpty() && Double.isFinite(Double.parseDouble(cell))) {
            json.writeNumberField(column, Double.parseDouble(cell));
        }
    }
}
