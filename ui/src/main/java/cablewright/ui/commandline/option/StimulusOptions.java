// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.simulator.wave.Stimulus;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The outgoing wave, as options. */
public final class StimulusOptions {

    private static final double USUAL_EDGE_SHARE = 0.1;
    private static final double MOST_EDGE_SHARE = 0.59;

    @Option(names = "--pulse", paramLabel = "TIME", converter = QuantityReader.Time.class)
    private Optional<Double> pulse = Optional.empty();

    @Option(names = "--step", paramLabel = "TIME", converter = QuantityReader.Time.class)
    private Optional<Double> step = Optional.empty();

    @Option(names = "--shape", paramLabel = "SHAPE")
    private Optional<Shape> shape = Optional.empty();

    @Option(names = "--edge", paramLabel = "TIME", converter = QuantityReader.Time.class)
    private Optional<Double> edge = Optional.empty();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /**
     * Makes the wave.
     *
     * @param usualPulseSeconds width where none is given
     */
    public Stimulus stimulus(double usualPulseSeconds) {
        if (pulse.isPresent() && step.isPresent()) {
            throw refusal("option.exclude", "--pulse", "--step");
        }
        if (edge.isPresent() && shape.orElse(Shape.HALF_SINE) != Shape.RECTANGULAR) {
            throw refusal("stimulus.edge");
        }
        return step.isPresent() ? step(step.get()) : pulse(pulse.orElse(usualPulseSeconds));
    }

    public boolean isStep() {
        return step.isPresent();
    }

    private Stimulus step(double rise) {
        Shape chosen = shape.orElse(Shape.RAISED_COSINE);
        if (!chosen.forStep()) {
            throw refusal("stimulus.forPulse", chosen);
        }
        requireWidth("--step", rise);
        return chosen.step(rise);
    }

    private Stimulus pulse(double width) {
        Shape chosen = shape.orElse(Shape.HALF_SINE);
        if (!chosen.forPulse()) {
            throw refusal("stimulus.forStep", chosen);
        }
        requireWidth("--pulse", width);
        double rise = edge.orElse(USUAL_EDGE_SHARE * width);
        if (chosen == Shape.RECTANGULAR) {
            requireWidth("--edge", rise);
            if (rise > MOST_EDGE_SHARE * width) {
                throw refusal("stimulus.longEdge");
            }
        }
        return chosen.pulse(width, rise);
    }

    private void requireWidth(String option, double seconds) {
        OptionLimit.WIDTH.require(spec, option, seconds);
    }

    private ParameterException refusal(String key, Object... arguments) {
        RootCommand root = (RootCommand) spec.root().userObject();
        return new ParameterException(spec.commandLine(), root.say(key, arguments));
    }
}
