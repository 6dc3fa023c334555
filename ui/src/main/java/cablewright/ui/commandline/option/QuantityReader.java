// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.ui.quantity.Quantity;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the quantities of options. One small class for each kind, since annotations name classes. */
public abstract class QuantityReader implements ITypeConverter<Double> {

    private final Quantity quantity;

    private QuantityReader(Quantity quantity) {
        this.quantity = quantity;
    }

    @Override
    public Double convert(String text) {
        try {
            return quantity.parse(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    /** Reads times. */
    static final class Time extends QuantityReader {
        Time() {
            super(Quantity.TIME);
        }
    }

    /** Reads lengths. */
    public static final class Length extends QuantityReader {
        Length() {
            super(Quantity.LENGTH);
        }
    }

    /** Reads frequencies. */
    public static final class Frequency extends QuantityReader {
        Frequency() {
            super(Quantity.FREQUENCY);
        }
    }

    /** Reads resistances. */
    public static final class Resistance extends QuantityReader {
        Resistance() {
            super(Quantity.RESISTANCE);
        }
    }

    /** Reads voltages. */
    public static final class Voltage extends QuantityReader {
        Voltage() {
            super(Quantity.VOLTAGE);
        }
    }

    /** Reads gains. */
    public static final class Level extends QuantityReader {
        Level() {
            super(Quantity.LEVEL);
        }
    }

    /** Reads velocities of propagation. */
    public static final class Velocity extends QuantityReader {
        Velocity() {
            super(Quantity.VELOCITY);
        }
    }
}
