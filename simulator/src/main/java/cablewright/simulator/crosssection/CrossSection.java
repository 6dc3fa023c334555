// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.material.Water;
import cablewright.simulator.notice.Notice;
import java.util.List;

/**
 * What a cut across a cable shows, and what follows from it for a wave: series impedance z(s) and shunt admittance y(s)
 * per metre.
 *
 * <p>All kinds are immutable records: two of equal parts are equal. Every condition gives a new cross-section and
 * rejects what can't be, naming field, value and limit. Conditions compose in any order of calling, and always act in
 * this order: core off centre, then outer conductor pressed (or wires moved), then unevenness, then temperature, then
 * water.
 */
public sealed interface CrossSection permits CoaxSection, PairSection, ConstantsSection, FittedSection {

    /** Frequency at which impedance and velocity are stated, Hz. */
    double REFERENCE_FREQUENCY_HERTZ = 1e8;

    /**
     * Works out series impedance and shunt admittance per metre.
     *
     * @param contour complex frequencies; share one between all cross-sections on the same grid
     * @return fresh arrays, owned by the caller
     */
    default PrimaryConstants primaryConstants(ContourSamples contour) {
        PrimaryConstants out = new PrimaryConstants(contour.size());
        primaryConstants(contour, out);
        return out;
    }

    /**
     * Works out series impedance and shunt admittance per metre into arrays that are used again.
     *
     * @param contour complex frequencies; share one between all cross-sections on the same grid
     * @param out receives z and y; as many values as frequencies
     */
    void primaryConstants(ContourSamples contour, PrimaryConstants out);

    /**
     * Works out series impedance and shunt admittance per metre on frequencies used once.
     *
     * @param sRe real parts of s, rad/s, 0 or more
     * @param sIm imaginary parts of s, rad/s, same length; s = 0 is not allowed
     * @return fresh arrays, owned by the caller
     */
    default PrimaryConstants primaryConstants(double[] sRe, double[] sIm) {
        return primaryConstants(new ContourSamples(sRe, sIm));
    }

    /**
     * Characteristic impedance without loss: external inductance only, permittivity at the reference frequency.
     *
     * @return ohm
     */
    double impedanceOhms();

    /**
     * Velocity of propagation without loss, with the same meaning.
     *
     * @return share of the speed of light
     */
    double velocityFraction();

    /**
     * Resistance at DC of both conductors one after the other, at the section's temperature.
     *
     * @return ohm per metre of cable
     */
    double loopResistanceOhmsPerMetre();

    /**
     * Attenuation of the matched line, {@code Re sqrt(z y)}.
     *
     * @param frequencyHertz frequency above 0
     * @return dB/m
     */
    default double attenuationDecibelPerMetreAt(double frequencyHertz) {
        PrimaryConstants at = primaryConstants(new double[1], new double[] {2 * Math.PI * frequencyHertz});
        double re = at.zRe()[0] * at.yRe()[0] - at.zIm()[0] * at.yIm()[0];
        double im = at.zRe()[0] * at.yIm()[0] + at.zIm()[0] * at.yRe()[0];
        double size = Math.hypot(re, im);
        double alpha = re > 0 ? Math.sqrt(0.5 * (size + re)) : Math.abs(im) / Math.sqrt(2 * (size - re));
        return alpha * PhysicalConstants.DECIBEL_PER_NEPER;
    }

    /**
     * Pressed from one side. Coax: see {@link CoaxSection}. Pair: the wires move together,
     * {@code s' = s - depth (s - d)}. Pressing twice presses the gap that is left.
     *
     * @param depthFraction share of the gap between the conductors, 0 to less than 1 (1 would be contact)
     * @return the pressed cross-section
     */
    CrossSection pinched(double depthFraction);

    /**
     * Core off centre, {@code e = 2c/(D - d)}. Twice off centre: each leaves (1 - e) of the thinnest gap.
     *
     * @param eccentricity 0 to less than 1 (1 would be contact)
     * @return the off-centre cross-section
     * @throws IllegalArgumentException also for a pair, which has no core to lie off centre
     */
    CrossSection offCentre(double eccentricity);

    /**
     * Water in the dielectric.
     *
     * @param picture how the water lies; say it with every result
     * @param volumeFraction share of the dielectric's volume that is water, 0 to 1
     * @param water the water
     * @return the wet cross-section
     * @throws IllegalArgumentException also for a film in a pair
     */
    CrossSection wet(WaterDistribution picture, double volumeFraction, Water water);

    /**
     * At another temperature: resistivity by each metal's coefficient, permittivity by thermal expansion.
     *
     * @param celsius temperature, -80 to 150 degrees Celsius; as built is 20. The last call counts
     * @return the warmed cross-section
     */
    CrossSection atTemperature(double celsius);

    /**
     * The wires of a pair pulled apart.
     *
     * @param spacingFactor new over old distance of centres, 1 to 50
     * @return the spread pair
     * @throws IllegalArgumentException also for a coax, which has no pair to spread
     */
    CrossSection spread(double spacingFactor);

    /**
     * Unevenness of any cause: impedance changes, velocity and conductors do not ({@code L' = r L}, {@code C' = C/r}).
     *
     * @param relativeImpedance r, 0.05 to 20 in all
     * @return the uneven cross-section
     */
    CrossSection scaled(double relativeImpedance);

    /**
     * What a picture of it needs.
     *
     * @return sizes in metres
     */
    SectionDrawing drawing();

    /**
     * Where the models are used near or outside their range.
     *
     * @param highestFrequencyHertz top of the band in use
     * @return remarks, may be empty
     */
    List<Notice> notices(double highestFrequencyHertz);
}
