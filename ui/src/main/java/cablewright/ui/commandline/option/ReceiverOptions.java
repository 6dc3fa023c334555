// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.simulator.instrument.Instrument;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The receiver, as options. What is left out is as in the instrument that lessons use. */
public final class ReceiverOptions {

    @Option(names = "--bandwidth", paramLabel = "FREQUENCY", converter = QuantityReader.Frequency.class)
    private Optional<Double> bandwidth = Optional.empty();

    @Option(names = "--noise", paramLabel = "VOLTAGE", converter = QuantityReader.Voltage.class)
    private Optional<Double> noise = Optional.empty();

    @Option(names = "--averages", paramLabel = "COUNT")
    private Optional<Integer> averages = Optional.empty();

    @Option(names = "--gain", paramLabel = "GAIN", converter = QuantityReader.Level.class)
    private Optional<Double> gain = Optional.empty();

    @Option(names = "--seed", paramLabel = "NUMBER", defaultValue = "1")
    private long seed = 1;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    public boolean given() {
        return bandwidth.isPresent() || noise.isPresent() || averages.isPresent() || gain.isPresent();
    }

    public int averages() {
        int count = averages.orElse(1);
        OptionLimit.AVERAGES.require(spec, "--averages", count);
        return count;
    }

    public double gainDecibels() {
        return OptionLimit.GAIN.require(spec, "--gain", gain.orElse(0.0));
    }

    public long seed() {
        return seed;
    }

    /** The usual instrument with what was asked for. */
    public Instrument instrument(double sourceOhms, int samples) {
        return over(Instrument.usual(sourceOhms), samples);
    }

    /** What was measured, with nothing of a receiver but what was asked for. */
    public Instrument asMeasured(double sourceOhms, int samples) {
        return over(Instrument.asMeasured(sourceOhms, samples), samples);
    }

    private Instrument over(Instrument usual, int samples) {
        return new Instrument(
                usual.sourceOhms(),
                OptionLimit.BANDWIDTH.require(spec, "--bandwidth", bandwidth.orElse(usual.bandwidthHertz())),
                usual.outgoingShare(),
                usual.recoveryShare(),
                usual.recoverySeconds(),
                OptionLimit.NOISE.require(spec, "--noise", noise.orElse(usual.noiseVolts())),
                usual.converterBits(),
                usual.fullScaleVolts(),
                samples,
                usual.timebaseErrorFraction(),
                usual.interference());
    }
}
