// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import java.util.List;
import java.util.SplittableRandom;

/** Draws of one seed. */
final class SeededRandom {

    private final SplittableRandom random;

    SeededRandom(long seed, long attempt) {
        this.random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + attempt);
    }

    double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** Spread evenly over the logarithm. */
    double logBetween(double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }

    int upTo(int most) {
        return random.nextInt(most + 1);
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    double normal() {
        return random.nextGaussian();
    }

    <T> T of(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    long seed() {
        return random.nextLong() >>> 16;
    }
}
