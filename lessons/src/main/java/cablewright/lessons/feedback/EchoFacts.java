// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.paths.Reflector;
import java.util.Optional;

/**
 * One place of an event on the trainee's own trace.
 *
 * @param echo what the event does to the trace there
 * @param seenVolts what the trainee's trace, with its noise, reads at the top of the echo [V]
 * @param withoutNoiseVolts what it reads there without noise; other events are in it [V]
 * @param contrastVolts largest change as the converter passes it, without sign [V]
 * @param noiseVolts noise after averaging, root mean square [V]
 * @param visibility whether it can be seen at what was set
 * @param reason why it is not clear there; empty where it is
 * @param other what it merges with, or what hides it; empty where there is none
 */
public record EchoFacts(
        EventEcho echo,
        double seenVolts,
        double withoutNoiseVolts,
        double contrastVolts,
        double noiseVolts,
        Visibility visibility,
        Optional<HiddenReason> reason,
        Optional<Reflector> other) {}
