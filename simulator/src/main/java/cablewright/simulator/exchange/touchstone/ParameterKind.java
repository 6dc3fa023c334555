// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.exchange.touchstone;

import cablewright.simulator.kernel.ComplexExp;

/**
 * Kinds of network parameters that a Touchstone file can hold, and how each becomes scattering parameters.
 *
 * <p>With v = V/√R and i = I√R at each port, v = a + b and i = a − b. Impedance, admittance and the two hybrids are the same
 * law x = M y with parts of v and i in x and y, so all give S = ±D (M − 1)(M + 1)^−1, D = 1 or diag(1, −1). (Frickey, IEEE
 * Trans. MTT 42(2), 205–211 (1994), tabulates the same for two ports, from memory.)
 */
enum ParameterKind {
    S(0, 0, 1, 1),
    Z(-1, -1, 1, 1),
    Y(1, 1, -1, -1),
    H(-1, 1, 1, -1),
    G(1, -1, -1, 1);

    private final int firstPower;
    private final int secondPower;
    private final int firstSign;
    private final int secondSign;

    /** Powers of √R that make an entry of M free of units, by row and the opposite by column; signs of D. */
    ParameterKind(int firstPower, int secondPower, int firstSign, int secondSign) {
        this.firstPower = firstPower;
        this.secondPower = secondPower;
        this.firstSign = firstSign;
        this.secondSign = secondSign;
    }

    boolean onlyForTwoPorts() {
        return this == G || this == H;
    }

    /**
     * Makes scattering parameters.
     *
     * @param m entries by row, real and imaginary part in turn, 2 for one port or 8 for two; replaced
     * @param ohms reference of each port
     * @param normalised whether the entries are already normalised to the reference, as in files of version 1
     */
    void toScattering(double[] m, double[] ohms, boolean normalised) {
        if (this == S) {
            return;
        }
        if (!normalised) {
            normalise(m, ohms);
        }
        if (ohms.length == 1) {
            cayleyOne(m);
        } else {
            cayleyTwo(m);
        }
        for (int i = 0; i < m.length; i++) {
            m[i] *= i < m.length / 2 ? firstSign : secondSign;
        }
    }

    private void normalise(double[] m, double[] ohms) {
        int ports = ohms.length;
        for (int row = 0; row < ports; row++) {
            for (int column = 0; column < ports; column++) {
                double factor = scale(row, ohms[row]) * scale(column, ohms[column]);
                m[2 * (row * ports + column)] *= factor;
                m[2 * (row * ports + column) + 1] *= factor;
            }
        }
    }

    private double scale(int port, double ohms) {
        return Math.pow(ohms, 0.5 * (port == 0 ? firstPower : secondPower));
    }

    private static void cayleyOne(double[] m) {
        ComplexExp.divide(m[0] - 1, m[1], m[0] + 1, m[1], m);
    }

    /** (M − 1)(M + 1)^−1 = 1 − 2 (M + 1)^−1. */
    private static void cayleyTwo(double[] m) {
        double aRe = m[0] + 1;
        double dRe = m[6] + 1;
        double detRe = aRe * dRe - m[1] * m[7] - (m[2] * m[4] - m[3] * m[5]);
        double detIm = aRe * m[7] + m[1] * dRe - (m[2] * m[5] + m[3] * m[4]);
        double[] twice = new double[2];
        ComplexExp.divide(2, 0, detRe, detIm, twice);
        double re = twice[0];
        double im = twice[1];
        double[] inverse = {dRe, m[7], -m[2], -m[3], -m[4], -m[5], aRe, m[1]};
        for (int i = 0; i < 8; i += 2) {
            double unit = i == 0 || i == 6 ? 1 : 0;
            m[i] = unit - (inverse[i] * re - inverse[i + 1] * im);
            m[i + 1] = -(inverse[i] * im + inverse[i + 1] * re);
        }
    }
}
