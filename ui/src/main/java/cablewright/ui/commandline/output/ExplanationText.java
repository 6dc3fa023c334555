// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.explanation.EventFacts;
import cablewright.simulator.explanation.visibility.Suggestion;
import cablewright.simulator.explanation.visibility.Visibility;
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
import java.util.Locale;
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
    private final Words words;

    public ExplanationText(
            Cable cable, List<EventFacts> facts, Map<String, Suggestion> suggestions, PathLines paths, Words words) {
        this.cable = cable;
        this.facts = List.copyOf(facts);
        this.suggestions = Map.copyOf(suggestions);
        this.paths = paths;
        this.words = words;
    }

    public String text() {
        if (facts.isEmpty()) {
            return "There are no events on this cable.\n" + paths.text();
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
                ? ", " + Quantities.number(fact.eventOhms().getAsDouble(), 1) + " Ω in a cable of "
                        + Quantities.number(fact.soundOhms(), 1) + " Ω"
                : "";
        return words.kind(fact.event().kind()) + " \"" + fact.event().id() + "\": "
                + new EventWords(words).detail(fact.event()) + ohms + "\n";
    }

    private String place(EventFacts fact) {
        Quantities quantities = words.quantities();
        StringBuilder out = new StringBuilder("  at ");
        out.append(quantities.length(fact.place().trueMetres(), 2));
        out.append(", shown at ").append(quantities.length(fact.place().shownMetres(), 2));
        out.append(", ")
                .append(quantities.time(fact.place().thereAndBackSeconds()))
                .append(" there and back");
        if (fact.lossDecibels().isPresent()) {
            out.append(", loss ")
                    .append(Quantities.number(fact.lossDecibels().getAsDouble(), 1))
                    .append(" dB");
        }
        out.append("\n    height ").append(quantities.percent(fact.place().expectedVolts()));
        out.append(" (")
                .append(quantities.decibels(fact.place().expectedVolts()))
                .append(")");
        if (fact.coefficient().isPresent()) {
            out.append(", ρ ").append(Quantities.number(fact.coefficient().getAsDouble(), 4));
            out.append(", as of ").append(quantities.ohms(fact.apparentOhms().getAsDouble()));
        }
        out.append(", noise ")
                .append(quantities.percent(fact.sight().noiseVolts()).replace("+", ""));
        return out.append("\n    ").append(visible(fact)).append('\n').toString();
    }

    private String visible(EventFacts fact) {
        Visibility visibility = fact.place().visibility();
        String verdict = visibility.name().toLowerCase(Locale.ROOT);
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
        return "\n    better with " + words.stimulus(suggestion.settings().stimulus()) + ", "
                + suggestion.settings().averages() + " averages, from the " + words.end(suggestion.end()) + ": "
                + suggestion.visibility().name().toLowerCase(Locale.ROOT);
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
                    fact.place().visibility().name().toLowerCase(Locale.ROOT),
                    fact.place()
                            .reason()
                            .map(r -> r.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                            .orElse("")));
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
