// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.visibility;

import cablewright.simulator.paths.Reflector;
import java.util.Optional;

/**
 * How one place of an event shows at given settings.
 *
 * @param trueMetres where it is on the cable, from the cable's near end [m]
 * @param shownMetres where the trace shows it, at the set velocity, from the end tested [m]
 * @param thereAndBackSeconds time of the wave from port to place and back [s]
 * @param expectedVolts height of the first lobe by which the event changes the noise-free trace there, with its sign, for
 *     an outgoing wave of 1 V [V]
 * @param contrastVolts largest such change, without sign, as the converter passes it [V]
 * @param clutterVolts how far the trace without the event swings in the same window [V]
 * @param visibility whether it can be seen
 * @param reason why it is not clear; empty where it is
 * @param other what it merges with, or what hides it; empty where there is none
 */
public record PlaceVisibility(
        double trueMetres,
        double shownMetres,
        double thereAndBackSeconds,
        double expectedVolts,
        double contrastVolts,
        double clutterVolts,
        Visibility visibility,
        Optional<HiddenReason> reason,
        Optional<Reflector> other) {}
