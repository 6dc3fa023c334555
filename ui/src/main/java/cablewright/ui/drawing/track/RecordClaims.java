// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What an as-built record claims, seen from the tested end. Claims whose distance from that end can't be known, because the
 * record gives no length to count back from, are left out.
 *
 * @param claims the claims, from the tested end
 * @param lengthMetres length that the record gives [m], where it does
 */
public record RecordClaims(List<Claim> claims, OptionalDouble lengthMetres) {

    /** Copies the list. */
    public RecordClaims {
        claims = List.copyOf(claims);
    }

    /**
     * One thing that is claimed.
     *
     * @param id the item's name; empty for the end of the line
     * @param metres distance from the tested end [m]
     * @param text what it is
     * @param isEnd whether it is the end of the line
     */
    public record Claim(String id, double metres, String text, boolean isEnd) {}

    /**
     * Reads a record.
     *
     * @param record the record
     * @param end the tested end
     * @param words names of ends
     * @return its claims
     */
    public static RecordClaims of(AsBuiltRecord record, LineEnd end, Words words) {
        boolean turned = end == LineEnd.FAR;
        List<Claim> claims = new ArrayList<>();
        for (RecordedItem item : record.items()) {
            if (!turned) {
                claims.add(new Claim(item.id(), item.positionMetres(), item.label(), false));
            } else if (record.lengthMetres().isPresent()) {
                double metres = record.lengthMetres().getAsDouble() - item.positionMetres();
                claims.add(new Claim(item.id(), metres, item.label(), false));
            }
        }
        String endLabel = turned ? words.end(LineEnd.NEAR) : words.recordedEnd(record.farEnd());
        record.lengthMetres().ifPresent(length -> claims.add(new Claim("", length, endLabel, true)));
        claims.sort(Comparator.comparingDouble(Claim::metres));
        return new RecordClaims(claims, record.lengthMetres());
    }
}
