// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.study;

import cablewright.simulator.check.VisibleText;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/** The head of a results file: where its numbers come from and what each column means, in lines that begin with '#'. */
final class StudyHeader {

    /** What the line of a shard begins with; a whole study has none. */
    static final String SHARD = "# shard ";

    private static final String FIRST = "# cablewright study, format 1";
    private static final List<String> OUTPUTS = List.of(
            "visibility: clear, marginal or hidden at the event's best place; impossible where no such cable can be",
            "reason: first reason why it is not clear",
            "contrast_v: largest change that the event makes in its window, for an outgoing wave of 1 V",
            "expected_v: height of the first lobe of that change, with its sign, V",
            "clutter_v: swing of the trace without the event in the same window, V",
            "noise_v: noise after averaging, root mean square, V",
            "true_m: where that place is on the cable, from its near end, m",
            "shown_m: where the trace shows it at the set velocity, from the end tested, m",
            "delay_s: time of the wave to it and back, s",
            "impedance_ohm: impedance where a condition is worst, at 100 MHz, ohm",
            "rho: reflection coefficient of a sharp edge to that impedance",
            "remark: why a cable can't be");

    private final List<String> provenance = new ArrayList<>();
    private final String columns;

    StudyHeader(StudyPlan plan, String fileName, byte[] file, String programVersion) {
        provenance.add(FIRST);
        provenance.add("# program " + oneLine(programVersion));
        provenance.add("# cable file " + oneLine(fileName) + ", sha256 " + hash(file));
        provenance.add("# event " + plan.eventId() + ", end " + StudyRow.word(plan.end()));
        provenance.add("# source " + Figures.text(plan.sourceOhms()) + " ohm");
        provenance.add("# settings " + settings(plan.settings()));
        plan.parameters().forEach(parameter -> provenance.add("# vary " + parameter.sentence()));
        provenance.add("# rows " + plan.rows() + ", " + plan.sampling().sentence());
        StringBuilder names = new StringBuilder("row");
        provenance.add("# column row: number of the row, from 0");
        for (Parameter parameter : plan.parameters()) {
            names.append(',').append(StudyRow.quoted(parameter.name()));
            provenance.add("# column " + parameter.name() + ": "
                    + StudySetting.ofColumn(parameter.name())
                            .map(StudySetting::meaning)
                            .orElse("SI unit, as in the cable file"));
        }
        for (String output : OUTPUTS) {
            names.append(',').append(output, 0, output.indexOf(':'));
            provenance.add("# column " + output);
        }
        columns = names.toString();
    }

    /** All lines that come before the first row, each with its end. */
    String text(Shard shard) {
        StringBuilder text = new StringBuilder();
        provenance.forEach(line -> text.append(line).append('\n'));
        if (shard.of() > 1) {
            text.append(SHARD).append(shard).append('\n');
        }
        return text.append(columns).append('\n').toString();
    }

    private static String settings(Settings settings) {
        Stimulus stimulus = settings.stimulus();
        double time = stimulus.isStep() ? stimulus.shortestEdgeSeconds() : stimulus.widthSeconds();
        return stimulus.getClass().getSimpleName() + " of " + Figures.text(time) + " s, velocity "
                + Figures.text(settings.velocityFraction()) + ", range " + Figures.text(settings.rangeMetres())
                + " m, gain " + Figures.text(settings.gainDecibels()) + " dB, averages " + settings.averages();
    }

    private static String oneLine(String text) {
        return VisibleText.line(text.replaceAll("\\R", " ")).strip();
    }

    private static String hash(byte[] file) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(file))
                    .toLowerCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
