// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.exchange.ScatteringSweep;
import cablewright.simulator.exchange.touchstone.TouchstoneWriter;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.OptionLimit;
import cablewright.ui.commandline.option.QuantityReader;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.CableSweep;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.words.NoticeWords;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Scattering parameters against frequency, as a Touchstone file. */
@Command(name = "response", mixinStandardHelpOptions = true)
public final class ResponseCommand implements Callable<Integer> {

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CABLE", descriptionKey = "parameter.cable")
    private Path cableFile;

    @Option(
            names = "--from",
            paramLabel = "FREQUENCY",
            defaultValue = "1MHz",
            converter = QuantityReader.Frequency.class)
    private double from = 1e6;

    @Option(names = "--to", paramLabel = "FREQUENCY", defaultValue = "1GHz", converter = QuantityReader.Frequency.class)
    private double to = 1e9;

    @Option(names = "--points", paramLabel = "COUNT", defaultValue = "1001")
    private int points = 1001;

    @Option(names = "--log")
    private boolean logarithmic;

    @Option(names = "--ports", paramLabel = "COUNT")
    private Optional<Integer> ports = Optional.empty();

    @Option(names = "--source", paramLabel = "RESISTANCE", converter = QuantityReader.Resistance.class)
    private Optional<Double> source = Optional.empty();

    @Option(names = "--far-source", paramLabel = "RESISTANCE", converter = QuantityReader.Resistance.class)
    private Optional<Double> farSource = Optional.empty();

    @Option(names = "--crosstalk", paramLabel = "EVENT")
    private Optional<String> crosstalk = Optional.empty();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        Path file = root.surroundings().folder().resolve(cableFile);
        double[] hertz = frequencies();
        int count = ports.orElse(namedTwoPorts() ? 2 : 1);
        if (count != 1 && count != 2) {
            throw new ParameterException(spec.commandLine(), root.say("option.ports", count));
        }
        Output output = new Output(root.surroundings(), out).notOver(file);
        Cable cable = InputFiles.cable(file);
        double near = resistance("--source", source, cable.runs().get(0).type().nominalImpedanceOhms());
        double far = resistance(
                "--far-source",
                farSource,
                cable.runs().get(cable.runs().size() - 1).type().nominalImpedanceOhms());
        if (count == 2 && cable.testLead().isPresent()) {
            root.remark(root.say("response.testLead"));
        }
        new NoticeWords(root.words()).withSteps(cable, to).forEach(notice -> root.remark("note: " + notice));
        CableSweep sweep = new CableSweep(cable, hertz);
        ScatteringSweep scattering = InputFiles.refusalsOf(file, () -> {
            if (crosstalk.isPresent()) {
                return sweep.besideEachOther(crosstalk.get(), near, far);
            }
            return count == 1 ? sweep.onePort(near) : sweep.twoPorts(near, far);
        });
        output.write(written(scattering, cable));
        return ExitCode.DONE;
    }

    private boolean namedTwoPorts() {
        return out.map(Path::toString).orElse("").toLowerCase(Locale.ROOT).endsWith(".s2p");
    }

    private double[] frequencies() {
        if (!(from > 0 && to > from && to <= 1e11)) {
            throw new ParameterException(spec.commandLine(), root.say("option.band"));
        }
        if (points < 2 || points > 200_000) {
            throw new ParameterException(spec.commandLine(), root.say("option.points", 200_000));
        }
        double[] hertz = new double[points];
        for (int i = 0; i < points; i++) {
            double share = (double) i / (points - 1);
            hertz[i] = logarithmic ? from * Math.pow(to / from, share) : from + share * (to - from);
        }
        hertz[points - 1] = to;
        return hertz;
    }

    private double resistance(String option, Optional<Double> given, double usual) {
        return OptionLimit.SOURCE.require(spec, option, given.orElse(usual));
    }

    private byte[] written(ScatteringSweep sweep, Cable cable) {
        StringBuilder text = new StringBuilder();
        List<String> comments = new ArrayList<>(List.of(cable.title()));
        if (crosstalk.isPresent()) {
            comments.add(root.say("response.crosstalk", crosstalk.get()));
        } else {
            comments.add(root.say(sweep.ports().size() == 1 ? "response.onePort" : "response.twoPorts"));
        }
        try {
            TouchstoneWriter.exact().write(sweep, comments, text);
        } catch (IOException e) {
            throw new UncheckedIOException("a text can't be written in memory", e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
