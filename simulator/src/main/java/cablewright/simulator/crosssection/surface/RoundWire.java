// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection.surface;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Require;
import cablewright.simulator.material.Conductor;

/**
 * Solid round wire: {@code Zi = g I0(g a) / (2 pi a sigma I1(g a))}, {@code g = sqrt(s mu sigma)}.
 *
 * <p>a radius, sigma conductivity, mu permeability. Written {@code Rdc z I0(z)/(2 I1(z))}, z = g a, it has no
 * singular point at DC, where it is {@code Rdc + s mu/(8 pi)}. High up {@code R = Rs/(2 pi a) + Rdc/4}.
 *
 * <p>Validity: displacement current in the metal neglected (any frequency below optics), current even around the wire.
 *
 * <p>Source: Ramo, Whinnery, Van Duzer, Fields and Waves in Communication Electronics, 3rd ed., ch. 4 (from memory).
 *
 * @param radiusMetres a
 * @param conductor the metal
 */
public record RoundWire(@Above(floor = 0) double radiusMetres, Conductor conductor) implements SurfaceImpedance {

    // Checks the ranges.
    public RoundWire {
        Require.components(RoundWire.class, radiusMetres, conductor);
    }

    @Override
    public void evaluate(double[] sRe, double[] sIm, double[] outRe, double[] outIm) {
        RoundBessel bessel = new RoundBessel();
        double quarter =
                0.25 * conductor.permeability() * conductor.conductivitySiemensPerMetre() * radiusMetres * radiusMetres;
        double rdc = dcResistanceOhmsPerMetre();
        for (int i = 0; i < sRe.length; i++) {
            bessel.half(quarter * sRe[i], quarter * sIm[i]);
            outRe[i] = rdc * bessel.halfRe;
            outIm[i] = rdc * bessel.halfIm;
        }
    }

    @Override
    public double dcResistanceOhmsPerMetre() {
        return 1 / (Math.PI * radiusMetres * radiusMetres * conductor.conductivitySiemensPerMetre());
    }

    @Override
    public double dcInductanceHenriesPerMetre() {
        return conductor.permeability() / (8 * Math.PI);
    }

    @Override
    public RoundWire atTemperature(double celsius) {
        return new RoundWire(radiusMetres, conductor.atTemperature(celsius));
    }
}
