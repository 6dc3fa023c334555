// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

/** Formats of a complex number in a Touchstone file. Angles are in degrees. */
public enum ValueFormat {
    /** Real and imaginary part. */
    RI {
        @Override
        void toParts(double first, double second, double[] out, int at) {
            out[at] = first;
            out[at + 1] = second;
        }

        @Override
        double first(double re, double im) {
            return re;
        }

        @Override
        double second(double re, double im) {
            return im;
        }
    },
    /** Magnitude and angle. */
    MA {
        @Override
        void toParts(double first, double second, double[] out, int at) {
            double angle = Math.toRadians(second);
            out[at] = first * Math.cos(angle);
            out[at + 1] = first * Math.sin(angle);
        }

        @Override
        double first(double re, double im) {
            return Math.hypot(re, im);
        }
    },
    /** 20 log10 of the magnitude, and angle. */
    DB {
        @Override
        void toParts(double first, double second, double[] out, int at) {
            MA.toParts(Math.pow(10, first / 20), second, out, at);
        }

        @Override
        double first(double re, double im) {
            return 20 * Math.log10(Math.max(SMALLEST, Math.hypot(re, im)));
        }
    };

    /** Stands for zero where a logarithm is written. */
    private static final double SMALLEST = 1e-300;

    abstract void toParts(double first, double second, double[] out, int at);

    abstract double first(double re, double im);

    double second(double re, double im) {
        return Math.toDegrees(Math.atan2(im, re));
    }
}
