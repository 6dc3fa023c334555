// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration.damagemap;

import cablewright.simulator.kernel.ComplexArray;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What damage of any severity reflects, from a few severities that are worked out. To first order R goes with
 * u = ln(1 − change), and R/u is a smooth function of u: it is interpolated on Chebyshev points by the barycentric formula
 * (J.-P. Berrut and L. N. Trefethen, SIAM Review 46, 501 (2004), from memory). A test holds it to the direct way.
 */
final class SeverityTable {

    private static final int NODES = 12;

    private final double[] u = new double[NODES];
    private final double[] weights = new double[NODES];
    private final ComplexArray[] reflections = new ComplexArray[NODES];

    /** Works the nodes out, several at a time; once cancelled, the rest is left out and the table must not be used. */
    SeverityTable(DamageEchoes echoes, double mildest, double worst, BooleanSupplier cancelled) {
        double from = Math.log(1 - mildest);
        double to = Math.log(1 - worst);
        for (int j = 0; j < NODES; j++) {
            u[j] = (from + to) / 2 + (from - to) / 2 * Math.cos(Math.PI * j / (NODES - 1));
            weights[j] = (j % 2 == 0 ? 1 : -1) * (j == 0 || j == NODES - 1 ? 0.5 : 1);
        }
        IntStream.range(0, NODES).parallel().forEach(j -> {
            if (!cancelled.getAsBoolean()) {
                reflections[j] = echoes.ofSeverity(-Math.expm1(u[j]));
            }
        });
    }

    /** R of a severity between the mildest and the worst. */
    ComplexArray ofSeverity(double change) {
        double wanted = Math.log(1 - change);
        double[] shares = shares(wanted);
        int n = reflections[0].count();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int j = 0; j < NODES; j++) {
            double share = shares[j] * wanted / u[j];
            for (int k = 0; k < n; k++) {
                re[k] += share * reflections[j].re(k);
                im[k] += share * reflections[j].im(k);
            }
        }
        return ComplexArray.takingOver(re, im);
    }

    private double[] shares(double wanted) {
        double[] shares = new double[NODES];
        double sum = 0;
        for (int j = 0; j < NODES; j++) {
            if (wanted == u[j]) {
                double[] one = new double[NODES];
                one[j] = 1;
                return one;
            }
            shares[j] = weights[j] / (wanted - u[j]);
            sum += shares[j];
        }
        for (int j = 0; j < NODES; j++) {
            shares[j] /= sum;
        }
        return shares;
    }
}
