// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.answerkey;

import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.Splice;

/**
 * What is true of an event: what the instructor says; else hardware belongs, unless its contact is bad or an correct record
 * lacks it; everything else is damage, a corroded joint among it.
 */
final class TrueVerdict {

    /** A contact of more than this share of the cable's impedance is bad (common practice, no source). */
    private static final double BAD_CONTACT_SHARE = 0.02;

    private TrueVerdict() {}

    static Verdict of(Event event, Exercise exercise) {
        return exercise.ruling(event.id()).flatMap(EventRuling::verdict).orElseGet(() -> usual(event, exercise));
    }

    private static Verdict usual(Event event, Exercise exercise) {
        AsBuiltRecord record = exercise.record();
        boolean hardware = event.kind().nature() == Nature.HARDWARE;
        boolean accounted = record.mayLie() || record.shows(event.id());
        double ohms = exercise.cable().runAt(event.startMetres()).type().nominalImpedanceOhms();
        boolean sound = contactOhms(event) <= BAD_CONTACT_SHARE * ohms;
        return hardware && accounted && sound ? Verdict.BELONGS : Verdict.DAMAGE;
    }

    private static double contactOhms(Event event) {
        if (event instanceof Connector connector) {
            return connector.contactResistanceOhms();
        }
        return event instanceof Splice splice ? splice.seriesResistanceOhms() : 0;
    }
}
