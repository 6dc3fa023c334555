// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Between;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;

/**
 * A metal: {@code rho(T) = (1 + alpha (T - 20)) / sigma}, linear in temperature from about -50 to +100 degrees
 * Celsius.
 *
 * <p>Permeability is taken as constant: right for copper and aluminium; for steel an assumption (it falls at high
 * field and above some MHz) that matters little where a copper skin carries the current.
 *
 * <p>Source: copper is 100 % of the International Annealed Copper Standard (IEC 60028, 5.80e7 S/m, 0.00393 1/K);
 * the other metals are handbook values from memory.
 *
 * @param name the metal's name
 * @param conductivitySiemensPerMetre conductivity sigma at 20 degrees Celsius
 * @param relativePermeability mu_r, 1 or more
 * @param temperatureCoefficientPerKelvin alpha, relative rise of resistivity per kelvin from 20 degrees Celsius
 */
public record Conductor(
        @Text(least = 0, most = Lines.PAGE) String name,
        @Above(floor = 0) double conductivitySiemensPerMetre,
        @Between(least = 1) double relativePermeability,
        @Between(least = -0.01, most = 0.01) double temperatureCoefficientPerKelvin) {

    /** The temperature at which tables of conductors and cables hold, degrees Celsius. */
    public static final double BASE_CELSIUS = 20.0;

    /** Annealed copper, IEC 60028. */
    public static final Conductor COPPER = new Conductor("copper", 5.8e7, 1.0, 0.00393);

    /** Aluminium for sheaths and foils, 3.5e7 S/m (about 60 % of copper). */
    public static final Conductor ALUMINIUM = new Conductor("aluminium", 3.5e7, 1.0, 0.0040);

    /** Low-carbon steel of a copper-clad centre: 5.8e6 S/m and mu_r 100 are assumptions, see the class text. */
    public static final Conductor STEEL = new Conductor("steel", 5.8e6, 100.0, 0.005);

    /** Tinned copper: skin currents run partly in the tin, taken as 85 % of copper. */
    public static final Conductor TINNED_COPPER = new Conductor("tinned copper", 4.93e7, 1.0, 0.00393);

    /** Silver-plated copper: the plating is slightly better than copper. */
    public static final Conductor SILVERED_COPPER = new Conductor("silvered copper", 6.1e7, 1.0, 0.0038);

    public Conductor {
        Require.components(
                Conductor.class,
                name,
                conductivitySiemensPerMetre,
                relativePermeability,
                temperatureCoefficientPerKelvin);
    }

    /**
     * The same metal at another temperature.
     *
     * @param celsius temperature, from -80 to 150 degrees Celsius
     * @return the metal with its conductivity there; base of the linear law stays 20 degrees Celsius, so ask this of
     *     the metal as tabulated
     * @throws IllegalArgumentException if the temperature is outside
     */
    public Conductor atTemperature(double celsius) {
        Require.between("celsius", celsius, -80, 150);
        double growth = 1 + temperatureCoefficientPerKelvin * (celsius - BASE_CELSIUS);
        return growth == 1
                ? this
                : new Conductor(
                        name,
                        conductivitySiemensPerMetre / growth,
                        relativePermeability,
                        temperatureCoefficientPerKelvin);
    }

    /**
     * The same metal with its apparent conductivity changed, as for a braid, whose wires' crossings and lay make it
     * behave like a poorer tube.
     *
     * @param factor apparent over true conductivity, above 0
     * @return the metal as it appears
     */
    public Conductor withConductivityFactor(double factor) {
        return new Conductor(
                name,
                conductivitySiemensPerMetre * Require.above("factor", factor, 0),
                relativePermeability,
                temperatureCoefficientPerKelvin);
    }

    /**
     * Skin depth {@code 1/sqrt(pi f mu sigma)}.
     *
     * @param frequencyHertz frequency above 0
     * @return skin depth in m
     */
    public double skinDepthMetres(double frequencyHertz) {
        return 1 / Math.sqrt(Math.PI * frequencyHertz * permeability() * conductivitySiemensPerMetre);
    }

    /**
     * Surface resistance {@code sqrt(pi f mu / sigma)}.
     *
     * @param frequencyHertz frequency above 0
     * @return surface resistance in ohm
     */
    public double surfaceResistanceOhms(double frequencyHertz) {
        return Math.sqrt(Math.PI * frequencyHertz * permeability() / conductivitySiemensPerMetre);
    }

    /**
     * Absolute permeability.
     *
     * @return mu_r mu_0 in H/m
     */
    public double permeability() {
        return relativePermeability * PhysicalConstants.MU_0;
    }
}
