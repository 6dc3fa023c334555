// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.material.Limits;
import java.util.List;
import java.util.Objects;

/**
 * A type of cable: its cross-section and what is published about it.
 *
 * @param id name in files and commands, lower-case ASCII letters, digits and hyphens, such as "drop-6-foam"
 * @param title name for people
 * @param family family
 * @param section cross-section as made, dry, at 20 degrees Celsius
 * @param source where its figures come from, and how the cross-section follows from them
 * @param nominalImpedanceOhms published characteristic impedance
 * @param nominalVelocityFraction published velocity of propagation, share of the speed of light
 * @param publishedAttenuation published attenuation by rising frequency; may be empty
 */
public record CableType(
        String id,
        String title,
        CableFamily family,
        CrossSection section,
        String source,
        double nominalImpedanceOhms,
        double nominalVelocityFraction,
        List<AttenuationPoint> publishedAttenuation) {

    // Rejects a type that can't exist and keeps its own list.
    public CableType {
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException(
                    "id is \"" + id + "\"; allowed are lower-case letters, digits and single hyphens between them.");
        }
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(family, "family");
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(source, "source");
        Limits.positive("nominalImpedanceOhms", nominalImpedanceOhms);
        Limits.require(
                nominalVelocityFraction > 0 && nominalVelocityFraction <= 1,
                "nominalVelocityFraction",
                nominalVelocityFraction,
                "above 0 and at most 1");
        publishedAttenuation = List.copyOf(publishedAttenuation);
    }
}
