// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

/**
 * What a round conductor adds to a line's series impedance by its own resistance and the field inside it, with the
 * current spread evenly around it. It depends on the conductor alone, not on where it lies or what surrounds it, so
 * {@code ContourSamples} works it out once for all pieces of a cable.
 *
 * <p>All kinds are analytic for Re s above 0 and passive.
 */
public sealed interface SurfaceImpedance permits RoundWire, CladWire, TubeShield, FoilAndBraid, FittedSurface {

    /**
     * Works out the impedance per metre at each frequency.
     *
     * @param sRe real parts of s, rad/s, 0 or more
     * @param sIm imaginary parts of s, rad/s, same length
     * @param outRe receives real parts, ohm/m, same length
     * @param outIm receives imaginary parts, ohm/m, same length
     */
    void evaluate(double[] sRe, double[] sIm, double[] outRe, double[] outIm);

    /**
     * Resistance at DC.
     *
     * @return ohm/m
     */
    double dcResistanceOhmsPerMetre();

    /**
     * Inductance of the field inside the metal at DC.
     *
     * @return H/m
     */
    double dcInductanceHenriesPerMetre();

    /**
     * Square of the slope k of the skin effect: far up {@code Z = k sqrt(s)}.
     *
     * @return k squared, ohm^2 s/(m^2 rad); {@code 2 L R} with L and R at DC unless the conductor says otherwise, which is
     *     exact for one metal
     */
    default double skinSlopeSquared() {
        return 2 * dcInductanceHenriesPerMetre() * dcResistanceOhmsPerMetre();
    }

    /**
     * The same conductor at another temperature.
     *
     * @param celsius temperature, -80 to 150 degrees Celsius; the conductor as built is at 20
     * @return the conductor there
     */
    SurfaceImpedance atTemperature(double celsius);
}
