// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.cable.hardware;

import cablewright.simulator.material.PhysicalConstants;

/**
 * What the trade asks of hardware that is new and well made: return loss at the top of a band. From it follows how large a
 * lumped reactance the hardware may be.
 *
 * <p>A reactance in series or across a matched line of impedance Z0 reflects more the higher the frequency, so the top of the
 * band decides. In series ρ = jωL/(2Z0 + jωL), across ρ = −jωC Z0/(2 + jωC Z0); with r = |ρ| both give r = x/√(4 + x²), x =
 * ωL/Z0 or ωC Z0, hence x = 2r/√(1 − r²) (Pozar, Microwave Engineering, 4th ed., ch. 4, from memory). It holds for hardware that
 * is short against the wave at the top of the band; below the top, return loss rises by 20 dB a decade, as the limit lines of
 * the standards do.
 *
 * <p>The documents named for coax are the published methods by which the trade measures this hardware; the limit beside each is
 * what is commonly asked for (common practice, no source). The limit lines of data cabling are those of TIA-568 (from memory).
 */
public enum ReturnLossClass {
    /** Two plugs and a barrel in the middle of a drop. Measured by ANSI/SCTE 05 and built to ANSI/SCTE 155 2017. */
    DROP_SPLICE(30, 1e9),
    /** A plug on a drop. Measured by ANSI/SCTE 04 2021. */
    DROP_CONNECTOR(30, 1e9),
    /** A splice of hardline. Measured by ANSI/SCTE 101 2011. */
    HARDLINE_SPLICE(30, 1e9),
    /** A pin connector on hardline. Measured by ANSI/SCTE 125 2020. */
    HARDLINE_CONNECTOR(30, 1e9),
    /** A hardline tap seen from its input, outlets terminated. Kind of device: ANSI/SCTE 265 2021; 16 to 20 dB at the top. */
    HARDLINE_TAP(18, 1e9),
    /** Connecting hardware of category 5e: 20 − 20 log(f/100 MHz) dB up to 100 MHz. */
    CATEGORY_5E(20, 100e6),
    /** Connecting hardware of category 6: 24 − 20 log(f/100 MHz) dB up to 250 MHz. */
    CATEGORY_6(16.04, 250e6),
    /** Connecting hardware of category 6A: 28 − 20 log(f/100 MHz) dB up to 500 MHz. */
    CATEGORY_6A(14.02, 500e6);

    private final double returnLossDecibels;
    private final double topHertz;

    ReturnLossClass(double returnLossDecibels, double topHertz) {
        this.returnLossDecibels = returnLossDecibels;
        this.topHertz = topHertz;
    }

    /**
     * Returns the least return loss at the top of the band.
     *
     * @return return loss [dB]
     */
    public double returnLossDecibels() {
        return returnLossDecibels;
    }

    /**
     * Returns the top of the band.
     *
     * @return frequency [Hz]
     */
    public double topHertz() {
        return topHertz;
    }

    /**
     * Finds the series inductance of hardware that just meets the class, or misses it.
     *
     * @param impedanceOhms impedance of the line on both sides [Ω]
     * @param decibelsWorse by how much it misses the class [dB]; below 0 for better than the class
     * @return inductance [H]
     */
    public double seriesInductanceHenries(double impedanceOhms, double decibelsWorse) {
        return normalisedReactance(decibelsWorse) * impedanceOhms / (2 * Math.PI * topHertz);
    }

    /**
     * Finds the shunt capacitance of hardware that just meets the class, or misses it.
     *
     * @param impedanceOhms impedance of the line on both sides [Ω]
     * @param decibelsWorse by how much it misses the class [dB]; below 0 for better than the class
     * @return capacitance [F]
     */
    public double shuntCapacitanceFarads(double impedanceOhms, double decibelsWorse) {
        return normalisedReactance(decibelsWorse) / (impedanceOhms * 2 * Math.PI * topHertz);
    }

    /**
     * Finds the impedance, below that of the line, of a short length of line inside hardware that just meets the class.
     *
     * <p>A length l of impedance Zc = Z0/n between lines of Z0 reflects r = (n − 1/n) tan θ/√(4 + (n + 1/n)² tan² θ), θ = 2πfl/c,
     * at the top of the band, or at the quarter wave if that comes first, where it reflects most.
     *
     * @param impedanceOhms impedance of the line on both sides [Ω]
     * @param lengthMetres electrical length at the speed of light [m]
     * @param decibelsWorse by how much it misses the class [dB]; below 0 for better than the class
     * @return impedance of the inside [Ω], below that of the line
     */
    public double insideImpedanceOhms(double impedanceOhms, double lengthMetres, double decibelsWorse) {
        double asked = reflection(decibelsWorse);
        double quarterWave = Math.PI / 2;
        double angle = 2 * Math.PI * topHertz * lengthMetres / PhysicalConstants.LIGHT_METRES_PER_SECOND;
        double sine = Math.sin(Math.min(quarterWave, angle));
        // With d = n − 1/n, (n + 1/n)² = d² + 4, so r² = d² s²/(4 + d² s²), s = sin θ.
        double difference = 2 * asked / (sine * Math.sqrt(1 - asked * asked));
        double n = difference / 2 + Math.sqrt(1 + difference * difference / 4);
        return impedanceOhms / n;
    }

    private double reflection(double decibelsWorse) {
        return Math.pow(10, -(returnLossDecibels - decibelsWorse) / 20);
    }

    private double normalisedReactance(double decibelsWorse) {
        double r = reflection(decibelsWorse);
        return 2 * r / Math.sqrt(1 - r * r);
    }
}
