// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.line.CableType;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Options for how an instrument is connected to a line and how its axis is scaled. Defaults suit the cable. */
public final class LineOptions {

    private static final double USUAL_OVER_LENGTH = 1.15;

    @Option(names = "--end", paramLabel = "END", defaultValue = "near")
    private LineEnd end = LineEnd.NEAR;

    @Option(names = "--source", paramLabel = "RESISTANCE", converter = QuantityReader.Resistance.class)
    private Optional<Double> source = Optional.empty();

    @Option(names = "--velocity", paramLabel = "VOP", converter = QuantityReader.Velocity.class)
    private Optional<Double> velocity = Optional.empty();

    @Option(names = "--range", paramLabel = "LENGTH", converter = QuantityReader.Length.class)
    private Optional<Double> range = Optional.empty();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    public LineEnd end() {
        return end;
    }

    public double sourceOhms(Cable cable) {
        double ohms = source.orElse(firstType(cable).nominalImpedanceOhms());
        return OptionLimit.SOURCE.require(spec, "--source", ohms);
    }

    public double velocityFraction(Cable cable) {
        double fraction = velocity.orElse(firstType(cable).nominalVelocityFraction());
        return OptionLimit.VELOCITY.require(spec, "--velocity", fraction);
    }

    public double rangeMetres(Cable cable) {
        double length = cable.lengthMetres()
                + cable.testLead().map(TestLead::lengthMetres).orElse(0.0);
        double usual = roundedUp(USUAL_OVER_LENGTH * length);
        return OptionLimit.RANGE.require(spec, "--range", range.orElse(Math.max(0.1, usual)));
    }

    /** The run that the wave meets first. */
    private CableType firstType(Cable cable) {
        int first = end == LineEnd.NEAR ? 0 : cable.runs().size() - 1;
        return cable.runs().get(first).type();
    }

    private static double roundedUp(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(value)) - 1);
        return Math.ceil(value / power - 1e-9) * power;
    }
}
