// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

/** The constants of nature that the models use, in SI units. */
public final class PhysicalConstants {

    /** Speed of light in vacuum, m/s (exact, SI). */
    public static final double LIGHT_METRES_PER_SECOND = 299_792_458.0;

    /** Magnetic constant, H/m (CODATA 2022). */
    public static final double MU_0 = 1.25663706127e-6;

    /** Electric constant, F/m: {@code 1/(mu0 c^2)}, so that mu0, epsilon0 and c agree to the last digit. */
    public static final double EPSILON_0 = 1.0 / (MU_0 * LIGHT_METRES_PER_SECOND * LIGHT_METRES_PER_SECOND);

    /** Wave impedance of vacuum, ohm: {@code mu0 c}. */
    public static final double ETA_0 = MU_0 * LIGHT_METRES_PER_SECOND;

    /** One neper in decibel. */
    public static final double DECIBEL_PER_NEPER = 20.0 / Math.log(10.0);

    private PhysicalConstants() {}
}
