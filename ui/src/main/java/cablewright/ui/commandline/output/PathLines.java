// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.output;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.explanation.attribution.Attribution;
import cablewright.simulator.explanation.attribution.Bump;
import cablewright.simulator.explanation.attribution.Turn;
import cablewright.simulator.explanation.attribution.WavePath;
import cablewright.simulator.paths.Reflector;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.words.PathWords;
import cablewright.ui.words.Words;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Which ways the wave took, and whose the extrema of the trace are. */
public final class PathLines {

    private static final int MOST_PATHS = 10;

    /** The same in every language, for programs to read. */
    private static final Reflector.Visitor<String> WORDS = new Reflector.Visitor<>() {
        @Override
        public String port() {
            return "the port";
        }

        @Override
        public String cableChange() {
            return "change of cable";
        }

        @Override
        public String endOfLine() {
            return "end of line";
        }

        @Override
        public String endOfBranch(String jointId) {
            return "end of line";
        }

        @Override
        public String events(List<String> ids) {
            return String.join("+", ids);
        }
    };

    private final Attribution attribution;
    private final double leastVolts;
    private final RootCommand root;
    private final Words words;
    private final PathWords paths;

    public PathLines(Cable cable, Attribution attribution, double leastVolts, RootCommand root) {
        this.attribution = attribution;
        this.leastVolts = leastVolts;
        this.root = root;
        this.words = root.words();
        this.paths = new PathWords(root.words(), cable);
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    private List<WavePath> ghosts() {
        return attribution.ghosts(leastVolts);
    }

    /** First echoes of what lies in branches. */
    private List<WavePath> branches() {
        return attribution.paths().stream()
                .filter(path -> path.isThroughBranch() && !path.isGhost() && Math.abs(path.peakVolts()) >= leastVolts)
                .sorted(Comparator.comparingDouble(path -> -Math.abs(path.peakVolts())))
                .toList();
    }

    String text() {
        return lines("path.branches", branches()) + lines("path.ghosts", ghosts()) + bumps();
    }

    private String lines(String head, List<WavePath> listed) {
        if (listed.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("\n").append(say(head)).append('\n');
        listed.stream().limit(MOST_PATHS).forEach(path -> out.append("  ")
                .append(root.say(
                        "explain.path",
                        words.quantities().length(path.shownMetres()),
                        words.quantities().percent(path.peakVolts()),
                        paths.description(path)))
                .append('\n'));
        if (listed.size() > MOST_PATHS) {
            out.append("  ")
                    .append(root.say("explain.morePaths", listed.size() - MOST_PATHS))
                    .append('\n');
        }
        return out.toString();
    }

    private String bumps() {
        if (attribution.bumps().isEmpty()) {
            return "\n" + say("bump.none") + "\n";
        }
        StringBuilder out = new StringBuilder("\n").append(say("bump.head")).append('\n');
        for (Bump bump : attribution.bumps()) {
            out.append("  ").append(paths.bump(bump)).append('\n');
        }
        return out.toString();
    }

    void writeTo(JsonGenerator json) throws IOException {
        json.writeNumberField("explained_share", attribution.explainedEnergyShare());
        json.writeArrayFieldStart("ghosts");
        for (WavePath ghost : ghosts()) {
            writePath(ghost, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("branch_echoes");
        for (WavePath echo : branches()) {
            writePath(echo, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("extrema");
        for (Bump bump : attribution.bumps()) {
            json.writeStartObject();
            json.writeNumberField("shown_m", bump.shownMetres());
            json.writeNumberField("stands_out_v", bump.standsOutVolts());
            json.writeNumberField("noise_v", bump.noiseVolts());
            json.writeNumberField("unexplained_v", bump.unexplainedVolts());
            json.writeArrayFieldStart("paths");
            for (Bump.Share share : bump.shares()) {
                json.writeStartObject();
                json.writeStringField("path", way(share.path()));
                json.writeNumberField("share_v", share.volts());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writePath(WavePath path, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("path", way(path));
        json.writeNumberField("orders", path.orders());
        json.writeNumberField("shown_m", path.shownMetres());
        json.writeNumberField("delay_s", path.arrivalSeconds());
        json.writeNumberField("height_v", path.peakVolts());
        json.writeEndObject();
    }

    /** Turns joined by &gt;, those in a branch after the names of its joints. */
    private static String way(WavePath path) {
        return path.turns().stream().map(PathLines::name).collect(Collectors.joining(" > "));
    }

    private static String name(Turn turn) {
        return turn.branchIds().stream().map(id -> id + "/").collect(Collectors.joining())
                + turn.at().accept(WORDS);
    }
}
