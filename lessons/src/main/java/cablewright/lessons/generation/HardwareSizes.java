// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.generation;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.ReturnLossClass;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.material.PhysicalConstants;

/**
 * Hardware as large as it is made for a type of cable: sized by its published return-loss class where it has one, else by the
 * conductor that is led apart in it.
 *
 * <p>Telephone pairs and building wire have no such class. There a joint is a length of the pair untwisted: its inductance rises
 * from (μ0/π) acosh(s/d) at the cable's spacing to that at the joint's, by about 0.44 μH/m from s/d = 1.8 to 5 (two round wires,
 * exact, external inductance). 25 mm of it is a well made joint of a telephone pair, 100 mm one in a box of building wire; in a
 * terminal the wires run apart in air for 50 or 100 mm (lengths: common practice, no source).
 */
public final class HardwareSizes {

    private static final double SPACING_IN_CABLE = 1.8;
    private static final double SPACING_IN_JOINT = 5;
    private static final double EXCESS_HENRIES_PER_METRE =
            PhysicalConstants.MU_0 / Math.PI * (acosh(SPACING_IN_JOINT) - acosh(SPACING_IN_CABLE));
    private static final double CONTACT_OHMS = 0.01;

    private final CableType type;

    /**
     * Sizes hardware for one type of cable.
     *
     * @param type the type
     */
    public HardwareSizes(CableType type) {
        this.type = type;
    }

    static boolean isPair(CableFamily family) {
        return family == CableFamily.TELEPHONE_PAIR
                || family == CableFamily.DATA_PAIR
                || family == CableFamily.BUILDING_WIRE;
    }

    /**
     * Makes a splice.
     *
     * @param id its name
     * @param metres where [m]
     * @param decibelsWorse by how much it misses its class, or is larger than a well made joint [dB]; below 0 for better
     * @return the splice
     */
    public Event splice(String id, double metres, double decibelsWorse) {
        double henries =
                switch (type.family()) {
                    case TELEPHONE_PAIR -> untwisted(0.025, decibelsWorse);
                    case BUILDING_WIRE -> untwisted(0.1, decibelsWorse);
                    case DATA_PAIR -> category().seriesInductanceHenries(ohms(), decibelsWorse);
                    case COAX_PLANT -> ReturnLossClass.HARDLINE_SPLICE.seriesInductanceHenries(ohms(), decibelsWorse);
                    default -> ReturnLossClass.DROP_SPLICE.seriesInductanceHenries(ohms(), decibelsWorse);
                };
        return new Splice(id, metres, henries, 0, CONTACT_OHMS);
    }

    /**
     * Makes a connector: a short length of line of lower impedance in coax, of higher where wires are led apart.
     *
     * @param id its name
     * @param metres where [m]
     * @param lengthMetres electrical length of the inside of one that has a class [m]
     * @param decibelsWorse by how much it misses its class [dB]; below 0 for better than the class
     * @return the connector
     */
    public Event connector(String id, double metres, double lengthMetres, double decibelsWorse) {
        return switch (type.family()) {
            case TELEPHONE_PAIR -> apart(id, metres, 0.05, decibelsWorse);
            case BUILDING_WIRE -> apart(id, metres, 0.1, decibelsWorse);
            case DATA_PAIR -> {
                double inside = category().insideImpedanceOhms(ohms(), lengthMetres, decibelsWorse);
                yield new Connector(id, metres, ohms() * ohms() / inside, lengthMetres, CONTACT_OHMS);
            }
            case COAX_PLANT -> coax(id, metres, lengthMetres, ReturnLossClass.HARDLINE_CONNECTOR, decibelsWorse);
            default -> coax(id, metres, lengthMetres, ReturnLossClass.DROP_CONNECTOR, decibelsWorse);
        };
    }

    /**
     * Makes a hardline tap.
     *
     * @param id its name
     * @param metres where [m]
     * @param throughLossDecibels its through loss [dB]
     * @param decibelsWorse by how much its stray capacitance misses the class [dB]; below 0 for better than the class
     * @return the tap
     */
    public Event tap(String id, double metres, double throughLossDecibels, double decibelsWorse) {
        double farads = ReturnLossClass.HARDLINE_TAP.shuntCapacitanceFarads(ohms(), decibelsWorse);
        return new Tap(id, metres, ohms(), throughLossDecibels, farads, 0);
    }

    private Event coax(String id, double metres, double length, ReturnLossClass asked, double decibelsWorse) {
        return new Connector(
                id, metres, asked.insideImpedanceOhms(ohms(), length, decibelsWorse), length, CONTACT_OHMS);
    }

    private ReturnLossClass category() {
        return switch (type.id()) {
            case "cat-6" -> ReturnLossClass.CATEGORY_6;
            case "cat-6a" -> ReturnLossClass.CATEGORY_6A;
            default -> ReturnLossClass.CATEGORY_5E;
        };
    }

    private double ohms() {
        return type.nominalImpedanceOhms();
    }

    private static double untwisted(double metres, double decibelsWorse) {
        return metres * EXCESS_HENRIES_PER_METRE * Math.pow(10, decibelsWorse / 20);
    }

    /** The wires led apart in air over a length, which grows with how badly it is done. */
    private static Event apart(String id, double metres, double lengthMetres, double decibelsWorse) {
        double inside = PhysicalConstants.ETA_0 / Math.PI * acosh(SPACING_IN_JOINT);
        double length = Math.min(1, lengthMetres * Math.pow(10, decibelsWorse / 20));
        return new Connector(id, metres, inside, length, CONTACT_OHMS);
    }

    private static double acosh(double x) {
        return Math.log(x + Math.sqrt(x * x - 1));
    }
}
