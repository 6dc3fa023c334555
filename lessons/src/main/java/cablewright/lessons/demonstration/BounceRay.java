// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.demonstration;

/**
 * One straight line of a lattice diagram: a wave on its way between two places that reflect.
 *
 * @param fromMetres where it starts [m]
 * @param fromSeconds when [s]
 * @param toMetres where it ends [m]
 * @param toSeconds when [s]
 * @param amplitude its height for an outgoing wave of 1
 * @param bounces how often it was reflected before
 */
public record BounceRay(
        double fromMetres, double fromSeconds, double toMetres, double toSeconds, double amplitude, int bounces) {}
