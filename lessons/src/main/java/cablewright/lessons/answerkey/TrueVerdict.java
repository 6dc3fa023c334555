// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.AsBuiltRecord;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.Nature;

/**
 * What is true of an event: hardware belongs, unless an honest record lacks it; everything else is damage, a corroded joint
 * among it.
 */
final class TrueVerdict {

    private TrueVerdict() {}

    static Verdict of(Event event, AsBuiltRecord record) {
        boolean hardware = event.kind().nature() == Nature.HARDWARE;
        boolean accounted = record.mayLie() || record.shows(event.id());
        return hardware && accounted ? Verdict.BELONGS : Verdict.DAMAGE;
    }
}
