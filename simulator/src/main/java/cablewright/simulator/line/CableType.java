// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import cablewright.simulator.check.Above;
import cablewright.simulator.check.Lines;
import cablewright.simulator.check.Matches;
import cablewright.simulator.check.Require;
import cablewright.simulator.check.Text;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import java.util.List;

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
        @Matches(
                        pattern = "[a-z0-9]+(-[a-z0-9]+)*",
                        words = "lower-case letters, digits and single hyphens between them")
                String id,
        @Text(least = 0, most = Lines.PAGE) String title,
        CableFamily family,
        CrossSection section,
        @Text(least = 0, most = Lines.PAGE) String source,
        @Above(floor = 0) double nominalImpedanceOhms,
        @Above(floor = 0, most = 1) double nominalVelocityFraction,
        List<AttenuationPoint> publishedAttenuation) {

    // Rejects a type that can't exist and keeps its own list.
    public CableType {
        Require.components(
                CableType.class,
                id,
                title,
                family,
                section,
                source,
                nominalImpedanceOhms,
                nominalVelocityFraction,
                publishedAttenuation);
        publishedAttenuation = List.copyOf(publishedAttenuation);
    }
}
