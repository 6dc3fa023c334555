// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.LineWave;
import java.util.HashMap;
import java.util.Map;

/**
 * By how much loss makes the top of an echo late. Skin effect alone turns a step into erfc(√(τ₀/t)) with
 * τ₀ = (αl)²/(4πf); the top of a short pulse comes within τ₀ of its front, half of a step after 4.4 τ₀ (Wigington &amp;
 * Nahman, Proc. IRE 45, 166 (1957), from memory). Where the loss grows otherwise than √f, it is an estimate.
 */
public final class DispersionDelay {

    private final CableProfile profile;
    private final double hertz;
    private final Frequencies frequency;
    private final Map<CrossSection, Double> nepersPerMetre = new HashMap<>();

    DispersionDelay(CableProfile profile, double hertz) {
        this.profile = profile;
        this.hertz = hertz;
        this.frequency = Frequencies.ofSweep(hertz);
    }

    /**
     * Returns τ₀ of a way.
     *
     * @param nepers attenuation of the whole way [Np]
     * @param hertz the frequency [Hz]
     * @return τ₀ [s]
     */
    public static double seconds(double nepers, double hertz) {
        return nepers * nepers / (4 * Math.PI * hertz);
    }

    /** τ₀ of the way to a place and back [s]. */
    double secondsThereAndBack(double metres) {
        double nepers = 0;
        for (CableProfile.Piece piece : profile.pieces()) {
            if (piece.startMetres() >= metres) {
                break;
            }
            double length = Math.min(metres, piece.endMetres()) - piece.startMetres();
            nepers += 2 * length * nepersPerMetre.computeIfAbsent(piece.section(), this::attenuation);
        }
        return seconds(nepers, hertz);
    }

    private double attenuation(CrossSection section) {
        return LineWave.on(section, frequency).propagation().re(0);
    }
}
