// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

/** Families of cable, as the trade sorts them. */
public enum CableFamily {
    /** Hardline of the outside plant. */
    COAX_PLANT,
    /** Foam coax from the plant to the premises. */
    COAX_DROP,
    /** Coax with solid dielectric. */
    COAX_SOLID,
    /** Outside-plant telephone pair. */
    TELEPHONE_PAIR,
    /** Twisted pair of premises data cabling. */
    DATA_PAIR,
    /** Power cable in buildings. */
    BUILDING_WIRE,
    /** Not a cable of the trade: a line for reference or for argument. */
    REFERENCE
}
