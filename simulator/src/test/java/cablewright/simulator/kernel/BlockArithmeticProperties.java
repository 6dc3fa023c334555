// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.BinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.complex.Complex;

/** Fast arithmetic on blocks against complex numbers as objects (Commons Math) and the library's functions. */
class BlockArithmeticProperties {

    private static final int COUNT = 37;

    private static ComplexBlock random(Random random, boolean rightHalf) {
        ComplexBlock block = new ComplexBlock(COUNT);
        for (int k = 0; k < COUNT; k++) {
            double size = Math.pow(10, 8 * random.nextDouble() - 4);
            double angle = (rightHalf ? 0.5 : 1) * Math.PI * (2 * random.nextDouble() - 1);
            block.put(k, size * Math.cos(angle), size * Math.sin(angle));
        }
        return block;
    }

    private static Complex at(ComplexBlock block, int k) {
        return new Complex(block.re(k), block.im(k));
    }

    private static void assertEach(ComplexBlock a, ComplexBlock b, BinaryOperator<Complex> law, ComplexBlock found) {
        for (int k = 0; k < COUNT; k++) {
            Complex expected = law.apply(at(a, k), at(b, k));
            double scale = expected.abs() + 1e-300;
            assertEquals(0, at(found, k).subtract(expected).abs() / scale, 1e-14);
        }
    }

    @Property(tries = 50)
    void productsAndQuotientsAreThoseOfComplexNumbers(@ForAll long seed) {
        Random random = new Random(seed);
        ComplexBlock a = random(random, false);
        ComplexBlock b = random(random, false);
        ComplexBlock out = new ComplexBlock(COUNT);
        assertEach(a, b, Complex::multiply, out.setProduct(a, b));
        assertEach(a, b, Complex::multiply, out.set(a).times(b));
        assertEach(a, b, Complex::divide, out.setQuotient(a, b));
        assertEach(a, b, Complex::divide, out.set(a).over(b));
        assertEach(a, b, (x, y) -> Complex.ONE.subtract(x), out.setOneMinus(a));
    }

    @Property(tries = 50)
    void stepsBetweenImpedancesOfTheRightHalfPlaneKeepTheirDigits(@ForAll long seed) {
        Random random = new Random(seed);
        ComplexBlock a = random(random, true);
        ComplexBlock b = random(random, true);
        ComplexBlock out = new ComplexBlock(COUNT).setDifferenceOverSum(a, b);
        for (int k = 0; k < COUNT; k++) {
            Complex expected = at(a, k).subtract(at(b, k)).divide(at(a, k).add(at(b, k)));
            assertEquals(0, at(out, k).subtract(expected).abs(), 1e-14 * (1 + expected.abs()));
        }
    }

    @Property(tries = 50)
    void rootsInTheRightHalfPlaneAreTheLibrarys(@ForAll long seed) {
        ComplexBlock a = random(new Random(seed), true);
        ComplexBlock root = new ComplexBlock(COUNT).setRoot(a.real(), a.imaginary());
        assertEach(a, a, (x, y) -> x.sqrt(), root);
    }

    /** The stated error, 7e-13 of the size, and what rounding the angle itself to the last digit does. */
    @Property(tries = 300)
    void decayIsTheLibrarysExponentialSineAndCosine(
            @ForAll long seed,
            @ForAll @DoubleRange(min = -6, max = 3.5) double logMetres,
            @ForAll @DoubleRange(min = -6, max = 1) double logLoss) {
        Random random = new Random(seed);
        double metres = Math.pow(10, logMetres);
        ComplexBlock gamma = new ComplexBlock(COUNT);
        for (int k = 0; k < COUNT; k++) {
            double loss = k == 0 ? 0 : Math.pow(10, logLoss) * random.nextDouble();
            gamma.put(k, loss, (random.nextDouble() - 0.2) * 200);
        }
        ComplexBlock out = new Exponential(COUNT).decay(gamma, metres, new ComplexBlock(COUNT));
        for (int k = 0; k < COUNT; k++) {
            double x = metres * gamma.re(k);
            double angle = metres * gamma.im(k);
            double size = Math.exp(-x);
            if (x <= Exponential.LARGEST) {
                double missed = Math.hypot(out.re(k) / size - Math.cos(angle), out.im(k) / size + Math.sin(angle));
                assertEquals(0, missed, 7e-13 + 2.3e-16 * Math.abs(angle), "x " + x + ", angle " + angle);
            } else {
                assertTrue(out.magnitude(k) < 1e-303);
            }
        }
    }
}
