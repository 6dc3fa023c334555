// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.reading.CandidateEvent;
import cablewright.simulator.reading.Measured;
import cablewright.simulator.reading.MergedEvent;
import cablewright.simulator.reading.MergedReading;
import cablewright.simulator.reading.VelocityFinding;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.words.Quantities;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * Candidate events, from one end or from both, written for people or for other programs.
 *
 * @param root knows the unit of lengths and the language
 * @param velocity the velocity by which times are distances
 */
public record CandidateList(RootCommand root, VelocityFinding velocity) {

    private Quantities quantities() {
        return root.quantities();
    }

    /** One end, for people. */
    public String text(List<CandidateEvent> candidates) {
        if (candidates.isEmpty()) {
            return root.say("read.nothing") + "\n";
        }
        Table table = new Table(
                root.say("read.head.distance"),
                "±",
                root.say("read.head.height"),
                root.say("read.head.returnLoss"),
                root.say("read.head.shape"));
        candidates.forEach(one -> table.add(
                quantities().value(one.metres()),
                quantities().uncertainty(one.metres()),
                quantities().percent(one.heightVolts().value()),
                Quantities.number(one.apparentReturnLossDecibels(), 1) + " dB",
                one.shape().id()));
        return table.aligned();
    }

    /** One end, one line for each candidate, in SI units. */
    public String csv(List<CandidateEvent> candidates) {
        Table table = new Table(
                "distance_m",
                "distance_uncertainty_m",
                "time_s",
                "time_uncertainty_s",
                "height_v",
                "height_uncertainty_v",
                "sign",
                "shape",
                "over_noise");
        candidates.forEach(one -> table.add(
                Double.toString(one.metres().value()),
                Double.toString(one.metres().uncertainty()),
                Double.toString(one.seconds().value()),
                Double.toString(one.seconds().uncertainty()),
                Double.toString(one.heightVolts().value()),
                Double.toString(one.heightVolts().uncertainty()),
                Integer.toString(one.sign()),
                one.shape().id(),
                Double.toString(one.overNoise())));
        return table.csv();
    }

    /** One end, as an array of objects. */
    public String json(List<CandidateEvent> candidates) {
        return json(generator -> {
            generator.writeStartObject();
            generator.writeArrayFieldStart("candidates");
            for (CandidateEvent one : candidates) {
                generator.writeStartObject();
                write(generator, one);
                generator.writeEndObject();
            }
            generator.writeEndArray();
            generator.writeEndObject();
        });
    }

    /** Both ends, for people. */
    public String text(MergedReading merged, Optional<Measured> knownLength) {
        StringBuilder out = new StringBuilder(agreement(merged, knownLength)).append('\n');
        if (merged.events().isEmpty()) {
            return out.append(root.say("read.nothingBetween")).append('\n').toString();
        }
        Table table = new Table(
                root.say("read.head.fromNear"),
                "±",
                root.say("read.head.near"),
                root.say("read.head.far"),
                root.say("read.head.seenFrom"));
        merged.events().forEach(event -> {
            Measured metres = metres(merged, event, knownLength);
            table.add(
                    quantities().value(metres),
                    quantities().uncertainty(metres),
                    shown(event.near()),
                    shown(event.far()),
                    seen(event));
        });
        return out.append(table.aligned()).toString();
    }

    private String agreement(MergedReading merged, Optional<Measured> knownLength) {
        if (merged.thereAndBackSeconds().isEmpty()) {
            return root.say("read.disagree") + "\n";
        }
        Measured length = merged.lengthMetres(velocity).orElseThrow();
        String sure = merged.isSure() ? root.say("read.sure", merged.agreements()) : root.say("read.guess");
        String velocities = knownLength
                .map(known -> {
                    VelocityFinding found = merged.velocity(known).orElseThrow();
                    return root.say(
                                    "read.velocity",
                                    quantities().length(known.value(), 2),
                                    Quantities.number(found.fraction(), 4),
                                    Quantities.number(found.uncertainty(), 4))
                            + "\n";
                })
                .orElse("");
        return root.say(
                        "read.endToEnd",
                        quantities().time(merged.thereAndBackSeconds().get().value()),
                        quantities().time(merged.thereAndBackSeconds().get().uncertainty()),
                        sure,
                        quantities().length(length.value(), 2),
                        quantities().length(length.uncertainty(), 2))
                + "\n"
                + velocities;
    }

    private Measured metres(MergedReading merged, MergedEvent event, Optional<Measured> knownLength) {
        return knownLength
                .flatMap(known -> merged.metresByShare(event, known))
                .orElseGet(() -> velocity.metres(event.nearSeconds()));
    }

    private String shown(Optional<CandidateEvent> candidate) {
        return candidate
                .map(one -> quantities().percent(one.heightVolts().value()) + " "
                        + one.shape().id())
                .orElseGet(() -> root.say("read.shownNothing"));
    }

    private String seen(MergedEvent event) {
        if (event.isSeenFromBoth()) {
            return root.say("read.both");
        }
        String side = event.near().isPresent() ? "near" : "far";
        return root.say((event.hidden() ? "read.hidden." : "read.alone.") + side);
    }

    /** Both ends, one line for each event, in SI units; the agreed time and length stand in every line. */
    public String csv(MergedReading merged, Optional<Measured> knownLength) {
        Table table = new Table(
                "distance_m",
                "distance_uncertainty_m",
                "near_time_s",
                "near_height_v",
                "near_shape",
                "far_time_s",
                "far_height_v",
                "far_shape",
                "hidden",
                "whole_time_s",
                "whole_time_uncertainty_s",
                "length_m",
                "agreements");
        String whole = merged.thereAndBackSeconds()
                .map(time -> Double.toString(time.value()))
                .orElse("");
        String doubt = merged.thereAndBackSeconds()
                .map(time -> Double.toString(time.uncertainty()))
                .orElse("");
        String length = merged.lengthMetres(velocity)
                .map(metres -> Double.toString(metres.value()))
                .orElse("");
        merged.events().forEach(event -> {
            Measured metres = metres(merged, event, knownLength);
            table.add(
                    Double.toString(metres.value()),
                    Double.toString(metres.uncertainty()),
                    cell(event.near(), 0),
                    cell(event.near(), 1),
                    cell(event.near(), 2),
                    cell(event.far(), 0),
                    cell(event.far(), 1),
                    cell(event.far(), 2),
                    Boolean.toString(event.hidden()),
                    whole,
                    doubt,
                    length,
                    Integer.toString(merged.agreements()));
        });
        return table.csv();
    }

    private static String cell(Optional<CandidateEvent> candidate, int column) {
        return candidate
                .map(one -> List.of(
                                Double.toString(one.seconds().value()),
                                Double.toString(one.heightVolts().value()),
                                one.shape().id())
                        .get(column))
                .orElse("");
    }

    /** Both ends, as one object. */
    public String json(MergedReading merged, Optional<Measured> knownLength) {
        return json(generator -> {
            generator.writeStartObject();
            generator.writeNumberField("agreements", merged.agreements());
            if (merged.thereAndBackSeconds().isPresent()) {
                write(generator, "whole_time", "s", merged.thereAndBackSeconds().get());
                write(generator, "length", "m", merged.lengthMetres(velocity).orElseThrow());
            }
            if (knownLength.isPresent() && merged.velocity(knownLength.get()).isPresent()) {
                VelocityFinding found = merged.velocity(knownLength.get()).orElseThrow();
                generator.writeNumberField("velocity_fraction", found.fraction());
                generator.writeNumberField("velocity_uncertainty", found.uncertainty());
            }
            generator.writeArrayFieldStart("events");
            for (MergedEvent event : merged.events()) {
                generator.writeStartObject();
                write(generator, "distance", "m", metres(merged, event, knownLength));
                generator.writeBooleanField("hidden", event.hidden());
                writeEnd(generator, "near", event.near());
                writeEnd(generator, "far", event.far());
                generator.writeEndObject();
            }
            generator.writeEndArray();
            generator.writeEndObject();
        });
    }

    private static void writeEnd(JsonGenerator generator, String name, Optional<CandidateEvent> candidate)
            throws IOException {
        if (candidate.isPresent()) {
            generator.writeObjectFieldStart(name);
            write(generator, candidate.get());
            generator.writeEndObject();
        }
    }

    private static void write(JsonGenerator generator, CandidateEvent one) throws IOException {
        write(generator, "distance", "m", one.metres());
        write(generator, "time", "s", one.seconds());
        write(generator, "height", "v", one.heightVolts());
        generator.writeNumberField("sign", one.sign());
        generator.writeStringField("shape", one.shape().id());
        generator.writeNumberField("over_noise", one.overNoise());
    }

    private static void write(JsonGenerator generator, String name, String unit, Measured value) throws IOException {
        generator.writeNumberField(name + "_" + unit, value.value());
        generator.writeNumberField(name + "_uncertainty_" + unit, value.uncertainty());
    }

    private interface Body {
        void write(JsonGenerator generator) throws IOException;
    }

    private static String json(Body body) {
        StringWriter out = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(out)) {
            body.write(generator);
        } catch (IOException e) {
            throw new UncheckedIOException("JSON can't be written in memory", e);
        }
        return out + "\n";
    }
}
