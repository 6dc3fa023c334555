// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.line.CableType;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** A cable; what its events do must be possible with the types of cable where they lie. */
final class CableCodec implements Codec {

    /** Where along a stretch the condition is tried: not in the middle, where a swing may have its zero. */
    private static final double TRIED_AT = 0.37;

    private final RecordCodec plain;

    CableCodec(RecordCodec plain) {
        this.plain = plain;
    }

    RecordCodec plain() {
        return plain;
    }

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        return plain.read(node, at, reading).filter(value -> isPossible((Cable) value, at, reading));
    }

    private static boolean isPossible(Cable cable, At at, ReadingState reading) {
        int before = reading.problems().size();
        tryTemperature(cable, at, reading);
        if (reading.problems().size() == before) {
            for (int i = 0; i < cable.events().size(); i++) {
                Event event = cable.events().get(i);
                if (event instanceof LineCondition condition) {
                    tryCondition(cable, condition, at.field("events").entry(i), reading);
                }
            }
        }
        return reading.problems().size() == before;
    }

    private static void tryTemperature(Cable cable, At at, ReadingState reading) {
        Set<CableType> types = new HashSet<>();
        cable.runs().stream().map(Run::type).forEach(types::add);
        cable.testLead().ifPresent(lead -> types.add(lead.type()));
        if (cable.farEnd() instanceof FarEnd.Endless) {
            types.add(((FarEnd.Endless) cable.farEnd()).type());
        }
        for (CableType type : types) {
            try {
                warmed(type, cable);
            } catch (IllegalArgumentException e) {
                reading.problem(
                        at.field("celsius"),
                        "is " + Numbers.text(cable.celsius()) + ", which type \"" + type.id() + "\" can't have",
                        "use " + Numbers.text(Cable.BASE_CELSIUS) + " with a type that is given by its constants");
            }
        }
    }

    private static CrossSection warmed(CableType type, Cable cable) {
        return cable.celsius() == Cable.BASE_CELSIUS
                ? type.section()
                : type.section().atTemperature(cable.celsius());
    }

    private static void tryCondition(Cable cable, LineCondition condition, At at, ReadingState reading) {
        Set<CableType> types = new HashSet<>();
        types.add(cable.runAt(condition.startMetres()).type());
        types.add(cable.runAt((condition.startMetres() + condition.endMetres()) / 2)
                .type());
        types.add(cable.runAt(Math.nextDown(condition.endMetres())).type());
        for (CableType type : types) {
            try {
                condition.applyTo(warmed(type, cable), condition.depthAt(TRIED_AT));
            } catch (IllegalArgumentException e) {
                String reason = e.getMessage();
                reading.problem(
                        at,
                        "can't be done to type \"" + type.id() + "\"",
                        reason.endsWith(".") ? reason.substring(0, reason.length() - 1) : reason);
                return;
            }
        }
    }

    @Override
    public void write(Object value, JsonGenerator out) throws IOException {
        plain.write(value, out);
    }
}
