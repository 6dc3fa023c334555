// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.simulator.instrument.Instrument;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
        within("--averages", count, 1, 65_536, "1 to 65536");
        return count;
    }

    public double gainDecibels() {
        return within("--gain", gain.orElse(0.0), 0, 80, "0dB to 80dB");
    }

    public long seed() {
        return seed;
    }

    /** The usual instrument with what was asked for. */
    public Instrument instrument(double sourceOhms, int samples) {
        Instrument usual = Instrument.usual(sourceOhms);
        return new Instrument(
                sourceOhms,
                within("--bandwidth", bandwidth.orElse(usual.bandwidthHertz()), 1e3, 1e12, "1kHz to 1000GHz"),
                usual.outgoingShare(),
                usual.recoveryShare(),
                usual.recoverySeconds(),
                within("--noise", noise.orElse(usual.noiseVolts()), 0, 1, "0V to 1V"),
                usual.converterBits(),
                usual.fullScaleVolts(),
                samples,
                usual.timebaseErrorFraction(),
                usual.interference());
    }

    private double within(String option, double value, double least, double most, String allowed) {
        if (!(value >= least && value <= most)) {
            throw new ParameterException(spec.commandLine(), option + " is out of range; allowed is " + allowed);
        }
        return value;
    }
}
