// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import cablewright.simulator.exchange.ScatteringSweep;
import cablewright.simulator.exchange.ScatteringSweep.PortLabel;
import cablewright.simulator.kernel.ComplexArray;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes scattering parameters as Touchstone, version 1.1 or 2.0, with every digit of a double, so that reading the file
 * gives the same numbers again (angles and decibels to the last digit or two). Source of the format: IBIS Open Forum,
 * Touchstone File Format Specification, version 2.0 (2009), and 2.1 (2024) for version 1.1.
 */
public final class TouchstoneWriter {

    private final Version version;
    private final FrequencyUnit unit;
    private final ValueFormat format;

    /** Versions of the format that are written. */
    public enum Version {
        /** The old form, read everywhere. */
        V1_1,
        /** The form with keywords. */
        V2_0
    }

    /**
     * Makes a writer.
     *
     * @param version version of the format
     * @param unit unit of the frequencies
     * @param format way of telling complex numbers
     */
    public TouchstoneWriter(Version version, FrequencyUnit unit, ValueFormat format) {
        this.version = version;
        this.unit = unit;
        this.format = format;
    }

    /**
     * Makes a writer of version 1.1 in hertz, real and imaginary parts: every digit is kept.
     *
     * @return the writer
     */
    public static TouchstoneWriter exact() {
        return new TouchstoneWriter(Version.V1_1, FrequencyUnit.HZ, ValueFormat.RI);
    }

    /**
     * Writes a sweep.
     *
     * @param sweep the sweep
     * @param comments lines to put at the head, without the mark of a comment
     * @param out where it goes; lines end with a line feed
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if the sweep is in mixed modes
     */
    public void write(ScatteringSweep sweep, List<String> comments, Appendable out) throws IOException {
        for (PortLabel port : sweep.ports()) {
            if (!port.name().matches("\\d+")) {
                throw new IllegalArgumentException(
                        "port " + port.name() + " is a mode of a pair; only plain ports are written");
            }
        }
        for (String comment : comments) {
            for (String line : comment.split("\\R")) {
                out.append("! ").append(line).append('\n');
            }
        }
        if (version == Version.V1_1) {
            out.append(optionLine(sweep, true)).append('\n');
        } else {
            keywords(sweep, out);
        }
        for (int k = 0; k < sweep.count(); k++) {
            record(sweep, k, out);
        }
        if (version == Version.V2_0) {
            out.append("[End]\n");
        }
    }

    private String optionLine(ScatteringSweep sweep, boolean everyPort) {
        List<PortLabel> ports = sweep.ports();
        StringBuilder line = new StringBuilder(
                "# " + unit.symbol() + " S " + format + " R " + ports.get(0).referenceOhms());
        if (everyPort
                && ports.size() == 2
                && ports.get(0).referenceOhms() != ports.get(1).referenceOhms()) {
            line.append(' ').append(ports.get(1).referenceOhms());
        }
        return line.toString();
    }

    private void keywords(ScatteringSweep sweep, Appendable out) throws IOException {
        out.append("[Version] 2.0\n").append(optionLine(sweep, false)).append('\n');
        out.append("[Number of Ports] " + sweep.ports().size() + "\n");
        if (sweep.ports().size() == 2) {
            out.append("[Two-Port Data Order] 21_12\n");
        }
        out.append("[Number of Frequencies] " + sweep.count() + "\n[Reference]");
        for (PortLabel port : sweep.ports()) {
            out.append(" " + port.referenceOhms());
        }
        out.append("\n[Matrix Format] Full\n[Network Data]\n");
    }

    private void record(ScatteringSweep sweep, int k, Appendable out) throws IOException {
        out.append(Double.toString(sweep.hertz(k) / unit.hertz()));
        for (ComplexArray values : inFileOrder(sweep)) {
            out.append(' ').append(Double.toString(format.first(values.re(k), values.im(k))));
            out.append(' ').append(Double.toString(format.second(values.re(k), values.im(k))));
        }
        out.append('\n');
    }

    private static List<ComplexArray> inFileOrder(ScatteringSweep sweep) {
        List<ComplexArray> values = new ArrayList<>();
        for (int from = 1; from <= sweep.ports().size(); from++) {
            for (int to = 1; to <= sweep.ports().size(); to++) {
                values.add(sweep.parameter(to, from));
            }
        }
        return values;
    }
}
