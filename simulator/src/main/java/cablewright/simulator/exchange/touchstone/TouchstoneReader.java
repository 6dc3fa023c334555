// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import cablewright.simulator.exchange.ScatteringSweep;
import cablewright.simulator.exchange.ScatteringSweep.PortLabel;
import cablewright.simulator.file.PlainFile;
import cablewright.simulator.kernel.ComplexArray;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads Touchstone files of one or two ports, versions 1.0, 1.1, 2.0 and 2.1: every unit, kind of parameter and format,
 * one reference or one for each port, any order of the words, any case, any breaking of lines. Whatever kind of parameter a
 * file holds, scattering parameters on the file's references come out. Noise data and information blocks are passed over.
 *
 * <p>Y, Z, G and H are normalised to the reference in version 1 and absolute in version 2. Source: IBIS Open Forum, Touchstone
 * File Format Specification, version 2.0 (2009) and version 2.1 (2024), whose version 1.1 is the old form with a reference
 * for each port.
 */
public final class TouchstoneReader {

    private final TouchstoneLines lines;

    private TouchstoneReader(TouchstoneLines lines) {
        this.lines = lines;
    }

    /**
     * Reads a file.
     *
     * @param file the file; the ending of its name, .s1p or .s2p, gives the number of ports of a file of version 1
     * @return the sweep
     * @throws TouchstoneFormatException if the file isn't sound; it says where, and what is allowed there
     * @throws IOException if the file can't be read at all
     */
    public static ScatteringSweep read(Path file) throws IOException {
        try (InputStream in = PlainFile.open(file, TouchstoneLines.MOST_BYTES)) {
            return read(String.valueOf(file.getFileName()), in);
        }
    }

    /**
     * Reads a file from a stream.
     *
     * @param name the file's name, for its ending and for messages
     * @param in the stream; it is read to its end, at most 256 MB, and not closed
     * @return the sweep
     * @throws TouchstoneFormatException if the file isn't sound
     * @throws IOException if the stream can't be read
     */
    public static ScatteringSweep read(String name, InputStream in) throws IOException {
        return new TouchstoneReader(new TouchstoneLines(name, in)).run();
    }

    /**
     * Reads a file held as text.
     *
     * @param name the file's name, for its ending and for messages
     * @param text what stands in it
     * @return the sweep
     * @throws TouchstoneFormatException if it isn't sound
     */
    public static ScatteringSweep readText(String name, String text) throws TouchstoneFormatException {
        try {
            return read(name, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        } catch (TouchstoneFormatException e) {
            throw e;
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory failed", e);
        }
    }

    private ScatteringSweep run() throws IOException {
        if (!lines.advance()) {
            throw lines.wrong("the file", "empty", "an option line that begins with #, then data");
        }
        if (lines.line().startsWith("[")) {
            return new TouchstoneVersion2(lines).read();
        }
        return readFirst();
    }

    private ScatteringSweep readFirst() throws IOException {
        TouchstoneOptions options = optionLine();
        TouchstoneRecords records = null;
        boolean noise = false;
        while (lines.advance() && !noise) {
            if (lines.line().startsWith("#")) {
                continue;
            }
            if (lines.line().startsWith("[")) {
                throw lines.wrong("the line", lines.line(), "numbers; keywords need [Version] 2.0 in the first line");
            }
            String[] words = lines.line().split("\\s+");
            if (records == null) {
                records = new TouchstoneRecords(lines, portsOf(words.length) == 1 ? 3 : 9);
            }
            noise = beginsNoise(records, words);
            if (!noise) {
                records.addLine(words);
            }
        }
        if (records == null) {
            records = new TouchstoneRecords(lines, 3);
        }
        records.requireWhole();
        double[] ohms = options.referencesFor(portsBySize(records), lines);
        return sweep(lines, options, records, plain(ohms), ohms, true, new int[] {0, 2, 1, 3});
    }

    private static int portsBySize(TouchstoneRecords records) {
        return records.size() == 9 ? 2 : 1;
    }

    private TouchstoneOptions optionLine() throws TouchstoneFormatException {
        if (!lines.line().startsWith("#")) {
            throw lines.wrong("the first line", lines.line(), "an option line such as # GHz S RI R 50");
        }
        return TouchstoneOptions.parse(lines);
    }

    /** Ports by the ending of the name or else by the first line of numbers. */
    private int portsOf(int numbersInLine) throws TouchstoneFormatException {
        String name = lines.file().toLowerCase(Locale.ROOT);
        if (name.matches(".*\\.s\\d+p")) {
            String ports = name.substring(name.lastIndexOf('.') + 2, name.length() - 1);
            if (!ports.equals("1") && !ports.equals("2")) {
                throw lines.wrong("the number of ports", ports, "1 or 2");
            }
            return Integer.parseInt(ports);
        }
        if (numbersInLine == 3) {
            return 1;
        }
        if (numbersInLine == 9 || numbersInLine == 5) {
            return 2;
        }
        throw lines.wrong(
                "the count of numbers in the first line", Integer.toString(numbersInLine), "3 for one port, 9 for two");
    }

    /** Noise data of two ports: five numbers in a line, beginning again at a lower frequency. */
    private boolean beginsNoise(TouchstoneRecords records, String[] words) throws TouchstoneFormatException {
        return portsBySize(records) == 2
                && words.length == 5
                && records.count() > 0
                && records.isBetweenRecords()
                && lines.numberOf(words[0]) <= records.value(records.count() - 1, 0);
    }

    static List<PortLabel> plain(double[] ohms) {
        List<PortLabel> labels = new ArrayList<>();
        for (double each : ohms) {
            labels.add(new PortLabel(Integer.toString(labels.size() + 1), each));
        }
        return labels;
    }

    /**
     * Turns records into scattering parameters.
     *
     * @param places for each entry by row, which pair of numbers of a record it is
     */
    static ScatteringSweep sweep(
            TouchstoneLines lines,
            TouchstoneOptions options,
            TouchstoneRecords records,
            List<PortLabel> labels,
            double[] ohms,
            boolean normalised,
            int[] places)
            throws TouchstoneFormatException {
        int ports = labels.size();
        if (ports == 1 && options.kind().onlyForTwoPorts()) {
            throw lines.wrong("the kind of parameter", options.kind().name(), "S, Y or Z for one port");
        }
        double[] hertz = new double[records.count()];
        double[][] parts = new double[2 * ports * ports][hertz.length];
        double[] entry = new double[2 * ports * ports];
        for (int k = 0; k < hertz.length; k++) {
            hertz[k] = records.value(k, 0) * options.unit().hertz();
            if (!Double.isFinite(hertz[k]) || k > 0 && !(hertz[k] > hertz[k - 1])) {
                throw lines.wrong(records.lineOf(k), "a frequency", hertz[k] + " Hz", "a finite one above that before");
            }
            for (int i = 0; i < ports * ports; i++) {
                int at = 1 + 2 * (ports == 1 ? 0 : places[i]);
                options.format().toParts(records.value(k, at), records.value(k, at + 1), entry, 2 * i);
            }
            options.kind().toScattering(entry, ohms, normalised);
            for (int i = 0; i < entry.length; i++) {
                requireFinite(lines, records.lineOf(k), entry[i]);
                parts[i][k] = entry[i];
            }
        }
        List<ComplexArray> parameters = new ArrayList<>();
        for (int i = 0; i < parts.length; i += 2) {
            parameters.add(ComplexArray.takingOver(parts[i], parts[i + 1]));
        }
        return new ScatteringSweep(hertz, labels, parameters);
    }

    private static void requireFinite(TouchstoneLines lines, int line, double value) throws TouchstoneFormatException {
        if (!Double.isFinite(value)) {
            throw lines.wrong(line, "a parameter", "without finite scattering", "values of a passive part");
        }
    }
}
