// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.paths.Reflector;
import java.util.Optional;

/**
 * How an event shows at the permitted settings that show it best.
 *
 * @param visibility whether it can be seen there
 * @param reason why it is not clear; empty where it is
 * @param other what it merges with, or what hides it; empty where there is none
 * @param settings those settings
 * @param end the end tested
 * @param metres the place of the event that shows so, from the cable's near end [m]
 * @param expectedVolts height by which it changes the noise-free trace, with its sign, for an outgoing wave of 1 V [V]
 * @param contrastVolts largest such change, without sign [V]
 * @param noiseVolts noise after averaging, root mean square [V]
 */
public record BestView(
        Visibility visibility,
        Optional<HiddenReason> reason,
        Optional<Reflector> other,
        Settings settings,
        LineEnd end,
        double metres,
        double expectedVolts,
        double contrastVolts,
        double noiseVolts) {}
