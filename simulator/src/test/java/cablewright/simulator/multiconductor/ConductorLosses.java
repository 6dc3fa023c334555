// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.multiconductor;

import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.material.Dielectric;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What metals and dielectric add to a line of several conductors: {@code Z(s) = sL + diag(r_i(s)) + r_0(s) 1 1^T},
 * {@code Y(s) = s C ε(s)/ε(100 MHz)}: each conductor's own impedance, that of the reference, through which all return, and one
 * dielectric law for all of C.
 *
 * @param conductors r_i of each conductor by itself
 * @param reference r_0 of the reference; empty for one without loss
 * @param dielectric the law by which C changes with frequency; empty for none
 */
public record ConductorLosses(
        List<SurfaceImpedance> conductors, Optional<SurfaceImpedance> reference, Optional<Dielectric> dielectric) {

    // Keeps its own list.
    public ConductorLosses {
        conductors = List.copyOf(conductors);
    }

    /** Parts of r_1 to r_n, r_0 and d at each frequency: real and imaginary in turn. */
    double[][] at(double[] sRe, double[] sIm) {
        int n = conductors.size();
        double[][] out = new double[2 * n + 4][sRe.length];
        for (int i = 0; i < n; i++) {
            conductors.get(i).evaluate(sRe, sIm, out[2 * i], out[2 * i + 1]);
        }
        if (reference.isPresent()) {
            reference.get().evaluate(sRe, sIm, out[2 * n], out[2 * n + 1]);
        }
        Arrays.fill(out[2 * n + 2], 1);
        if (dielectric.isPresent()) {
            double nominal = dielectric.get().realPermittivityAt(CrossSection.REFERENCE_FREQUENCY_HERTZ);
            dielectric.get().relativePermittivity(sRe, sIm, out[2 * n + 2], out[2 * n + 3]);
            for (int k = 0; k < sRe.length; k++) {
                out[2 * n + 2][k] /= nominal;
                out[2 * n + 3][k] /= nominal;
            }
        }
        return out;
    }
}
