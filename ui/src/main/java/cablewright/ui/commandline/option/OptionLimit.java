// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.simulator.check.Range;
import cablewright.simulator.check.Readable;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.HalfSine;
import cablewright.ui.quantity.Quantity;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What options allow: the limits that are stated on the components that they set. */
public enum OptionLimit {
    /** A velocity of propagation that is set. */
    VELOCITY(Settings.class, "velocityFraction", Quantity.VELOCITY),
    /** A range that is shown. */
    RANGE(Settings.class, "rangeMetres", Quantity.LENGTH),
    /** A gain. */
    GAIN(Settings.class, "gainDecibels", Quantity.LEVEL),
    /** A number of records. */
    AVERAGES(Settings.class, "averages"),
    /** A bandwidth of the receiver. */
    BANDWIDTH(Instrument.class, "bandwidthHertz", Quantity.FREQUENCY),
    /** Noise of the receiver. */
    NOISE(Instrument.class, "noiseVolts", Quantity.VOLTAGE),
    /** A resistance of a source. */
    SOURCE(Instrument.class, "sourceOhms", Quantity.RESISTANCE),
    /** A width or rise time of a stimulus. */
    WIDTH(HalfSine.class, "widthSeconds", Quantity.TIME);

    private final Range range;
    private final Optional<Quantity> quantity;

    OptionLimit(Class<?> record, String component) {
        this.range = Range.of(record, component);
        this.quantity = Optional.empty();
    }

    OptionLimit(Class<?> record, String component, Quantity quantity) {
        this.range = Range.of(record, component);
        this.quantity = Optional.of(quantity);
    }

    /** Returns the key by which help texts refer to it. */
    String key() {
        return "limit." + name().toLowerCase(Locale.ROOT);
    }

    /** Returns what is allowed, such as "0.1m to 200km". */
    public String words() {
        return text(range.least()) + " to " + text(range.most());
    }

    private String text(double value) {
        return quantity.map(it -> it.text(value)).orElse(Readable.exact(value));
    }

    /**
     * Checks a value.
     *
     * @param spec the command
     * @param option its option
     * @param value what was given, in SI units
     * @throws ParameterException if it is not allowed
     */
    public double require(CommandSpec spec, String option, double value) {
        if (!range.contains(value)) {
            throw new ParameterException(spec.commandLine(), option + " is out of range; allowed is " + words());
        }
        return value;
    }
}
