// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.command;

import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.ListFormat;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.commandline.output.Output;
import cablewright.ui.commandline.output.Table;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** The cable types. */
@Command(name = "catalogue", mixinStandardHelpOptions = true)
public final class CatalogueCommand implements Callable<Integer> {

    private static final double[] HERTZ = {1e6, 1e7, 1e8, 1e9};
    private static final double METRES_PER_HUNDRED_FEET = 30.48;

    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "TYPE", arity = "0..1", descriptionKey = "parameter.type")
    private Optional<String> id = Optional.empty();

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text")
    private ListFormat format = ListFormat.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE")
    private Optional<Path> out = Optional.empty();

    @Override
    public Integer call() {
        Output output = new Output(root.surroundings(), out).checked();
        String text = id.isPresent() ? one(type(id.get())) : format == ListFormat.CSV ? csv() : aligned();
        String shown =
                format == ListFormat.CSV ? text : root.surroundings().style().plain(text);
        output.write(shown.getBytes(StandardCharsets.UTF_8));
        return ExitCode.DONE;
    }

    private static CableType type(String id) {
        try {
            return Catalogue.standard().type(id);
        } catch (IllegalArgumentException e) {
            throw new InputProblem(e.getMessage());
        }
    }

    private boolean feet() {
        return root.lengthUnit() == LengthUnit.FEET;
    }

    private String perHundred(double decibelPerMetre) {
        return Quantities.number(decibelPerMetre * (feet() ? METRES_PER_HUNDRED_FEET : 100), 2);
    }

    private String aligned() {
        Table table = new Table(
                root.say("catalogue.head.id"),
                "Ω",
                root.say("catalogue.head.velocity"),
                root.say("catalogue.head.attenuation", perHundredUnit()),
                "10",
                "100",
                "1000 MHz",
                root.say("catalogue.head.type"));
        for (CableType type : Catalogue.standard().types()) {
            List<String> cells = new ArrayList<>(List.of(
                    type.id(),
                    Quantities.significant(type.nominalImpedanceOhms()),
                    Quantities.number(type.nominalVelocityFraction(), 3)));
            for (double hertz : HERTZ) {
                cells.add(perHundred(type.section().attenuationDecibelPerMetreAt(hertz)));
            }
            cells.add(type.title());
            table.add(cells.toArray(new String[0]));
        }
        return table.aligned();
    }

    private static String csv() {
        Table table = new Table(
                "id",
                "title",
                "family",
                "nominal_impedance_ohm",
                "nominal_velocity_fraction",
                "db_per_m_at_1_mhz",
                "db_per_m_at_10_mhz",
                "db_per_m_at_100_mhz",
                "db_per_m_at_1000_mhz",
                "source");
        for (CableType type : Catalogue.standard().types()) {
            List<String> cells = new ArrayList<>(List.of(
                    type.id(),
                    type.title(),
                    family(type),
                    Double.toString(type.nominalImpedanceOhms()),
                    Double.toString(type.nominalVelocityFraction())));
            for (double hertz : HERTZ) {
                cells.add(Double.toString(type.section().attenuationDecibelPerMetreAt(hertz)));
            }
            cells.add(type.source());
            table.add(cells.toArray(new String[0]));
        }
        return table.csv();
    }

    private static String family(CableType type) {
        return Words.word(type.family());
    }

    private String one(CableType type) {
        StringBuilder text = new StringBuilder(type.id() + ": " + type.title() + "\n");
        line(text, "catalogue.family", family(type));
        line(
                text,
                "catalogue.impedance",
                root.quantities().ohms(type.nominalImpedanceOhms()),
                Quantities.number(type.section().impedanceOhms(), 2));
        line(
                text,
                "catalogue.velocity",
                Quantities.number(type.nominalVelocityFraction(), 3),
                Quantities.number(type.section().velocityFraction(), 4));
        line(text, "catalogue.attenuation", perHundredUnit());
        type.publishedAttenuation()
                .forEach(point -> text.append(String.format(
                        Locale.ROOT,
                        "  %8s MHz  %8s  %8s\n",
                        Quantities.significant(point.frequencyHertz() / 1e6),
                        perHundred(point.decibelPerMetre()),
                        perHundred(type.section().attenuationDecibelPerMetreAt(point.frequencyHertz())))));
        line(text, "catalogue.source", type.source());
        return text.toString();
    }

    private void line(StringBuilder text, String key, Object... arguments) {
        text.append(root.say(key, arguments)).append('\n');
    }

    private String perHundredUnit() {
        return feet() ? "dB/100 ft" : "dB/100 m";
    }
}
