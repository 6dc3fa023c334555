// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import cablewright.simulator.exchange.ScatteringSweep;
import cablewright.simulator.exchange.ScatteringSweep.PortLabel;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads what makes a file of version 2: keywords first, then network data, noise data, and an end. */
final class TouchstoneVersion2 {

    private final TouchstoneLines lines;
    private final TouchstoneKeywords keywords;
    private TouchstoneOptions options;
    private TouchstoneRecords records;

    TouchstoneVersion2(TouchstoneLines lines) {
        this.lines = lines;
        this.keywords = new TouchstoneKeywords(lines);
    }

    /** Reads on from the first line, which begins with a bracket. */
    ScatteringSweep read() throws IOException {
        if (!keywords.take().equals("version")) {
            throw lines.wrong("the first keyword", lines.line(), "[Version] 2.0");
        }
        keywords.oneOf("version", "", List.of("2.0", "2.1"));
        boolean more = lines.advance();
        while (more && !keywords.has("end")) {
            takeLine();
            more = lines.advance();
        }
        if (more) {
            throw lines.wrong("what stands after [End]", lines.line(), "nothing");
        }
        if (!keywords.has("end") || records == null) {
            throw keywords.wrong(records == null ? "network data" : "end", "this keyword; the file may be cut short");
        }
        return sweep();
    }

    private void takeLine() throws TouchstoneFormatException {
        String line = lines.line();
        if (keywords.has("begin information") && !keywords.has("end information")) {
            if (line.toLowerCase(Locale.ROOT).startsWith("[end information]")) {
                keywords.take();
            }
        } else if (line.startsWith("#")) {
            options = options == null ? TouchstoneOptions.parse(lines) : options;
        } else if (line.startsWith("[")) {
            if (keywords.take().equals("network data")) {
                records = new TouchstoneRecords(lines, 1 + 2 * entries());
            }
        } else if (records == null && keywords.goesOn()) {
            keywords.takeMore(line);
        } else if (records == null) {
            throw lines.wrong("the line", line, "a keyword; numbers come after [Network Data]");
        } else if (!keywords.has("noise data")) {
            records.addLine(line.split("\\s+"));
        }
    }

    private int ports() throws TouchstoneFormatException {
        return keywords.wholeNumber("number of ports", 1, 2);
    }

    private boolean isFull() throws TouchstoneFormatException {
        return keywords.oneOf("matrix format", "full", List.of("full", "lower", "upper"))
                .equals("full");
    }

    private int entries() throws TouchstoneFormatException {
        int ports = ports();
        return isFull() ? ports * ports : ports * (ports + 1) / 2;
    }

    private int[] places() throws TouchstoneFormatException {
        if (!isFull()) {
            return new int[] {0, 1, 1, 2};
        }
        if (ports() == 2 && !keywords.has("two port data order")) {
            throw keywords.wrong("two port data order", "12_21 or 21_12, which a file of two ports must say");
        }
        boolean byRow = keywords.oneOf("two port data order", "21_12", List.of("12_21", "21_12"))
                .equals("12_21");
        return byRow ? new int[] {0, 1, 2, 3} : new int[] {0, 2, 1, 3};
    }

    private ScatteringSweep sweep() throws TouchstoneFormatException {
        if (options == null) {
            throw lines.wrong("the option line", "missing", "a line such as # GHz S RI R 50 after [Version]");
        }
        records.requireWhole();
        int wanted = keywords.wholeNumber("number of frequencies", 1, ScatteringSweep.MOST_FREQUENCIES);
        if (wanted != records.count()) {
            throw keywords.wrong("number of frequencies", "the number there are, " + records.count());
        }
        List<PortLabel> labels = labels(references());
        double[] ohms = labels.stream().mapToDouble(PortLabel::referenceOhms).toArray();
        return TouchstoneReader.sweep(lines, options, records, labels, ohms, false, places());
    }

    private double[] references() throws TouchstoneFormatException {
        int ports = ports();
        if (!keywords.has("reference")) {
            return options.referencesFor(ports, lines);
        }
        List<String> words = keywords.wordsOf("reference");
        if (words.size() != ports) {
            throw keywords.wrong("reference", "one resistance for each of " + ports + " port(s)");
        }
        double[] ohms = new double[ports];
        for (int i = 0; i < ports; i++) {
            ohms[i] = TouchstoneOptions.resistance(lines, words.get(i));
        }
        return ohms;
    }

    /** Names the ports; a pair given in mixed modes has 2R in its differential and R/2 in its common mode. */
    private List<PortLabel> labels(double[] ohms) throws TouchstoneFormatException {
        List<String> order = keywords.wordsOf("mixed mode order").stream()
                .map(word -> word.toUpperCase(Locale.ROOT))
                .toList();
        if (order.isEmpty() || order.stream().allMatch(word -> word.startsWith("S"))) {
            return TouchstoneReader.plain(ohms);
        }
        boolean pair = order.size() == 2
                && order.stream().anyMatch(word -> word.matches("D(1,2|2,1)"))
                && order.stream().anyMatch(word -> word.matches("C(1,2|2,1)"));
        if (!pair || ohms[0] != ohms[1] || options.kind().onlyForTwoPorts()) {
            throw keywords.wrong(
                    "mixed mode order", "D1,2 and C1,2 in either order, of S, Y or Z, with one reference for both");
        }
        List<PortLabel> labels = new ArrayList<>();
        for (String word : order) {
            labels.add(new PortLabel(word, word.startsWith("D") ? 2 * ohms[0] : ohms[0] / 2));
        }
        return labels;
    }
}
