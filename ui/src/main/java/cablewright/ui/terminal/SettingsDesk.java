// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Changes settings within what an exercise permits; refusals say what is permitted. */
final class SettingsDesk {

    private static final double SAME = 1e-6;
    private static final double SAME_RANGE = 0.005;

    private final Permitted permitted;
    private final Words words;
    private final Texts texts;

    SettingsDesk(Permitted permitted, RoundView view) {
        this.permitted = permitted;
        this.words = view.words();
        this.texts = view.texts();
    }

    Settings width(Settings settings, Instruction.Width asked) {
        String choices = choices("widths", widths(asked.step()));
        return settings.withStimulus(
                chosen(stimuli(asked.step()), Stimulus::resolutionSeconds, SAME, asked.seconds(), choices));
    }

    Settings velocity(Settings settings, OptionalDouble asked) {
        double fraction = asked.orElseThrow(() -> new Refused("because", choices("velocities", velocities())));
        if (!permitted.velocity().allows(fraction)) {
            throw new Refused("setting", choices("velocities", velocities()));
        }
        return settings.withVelocityFraction(fraction);
    }

    Settings range(Settings settings, OptionalDouble asked) {
        String choices = choices("ranges", ranges());
        return settings.withRangeMetres(chosen(permitted.rangesMetres(), m -> m, SAME_RANGE, asked, choices));
    }

    Settings gain(Settings settings, OptionalDouble asked) {
        String choices = choices("gains", gains());
        return settings.withGainDecibels(chosen(permitted.gainsDecibels(), g -> g, SAME, asked, choices));
    }

    Settings averages(Settings settings, OptionalDouble asked) {
        String choices = choices("averages", averages());
        return settings.withAverages(chosen(permitted.averages(), n -> n, SAME, asked, choices));
    }

    LineEnd end(Optional<LineEnd> asked) {
        String choices = choices("ends", ends());
        LineEnd end = asked.orElseThrow(() -> new Refused("because", choices));
        if (!permitted.ends().contains(end)) {
            throw new Refused("setting", choices);
        }
        return end;
    }

    /** A number of something that can be chosen. */
    private interface Measure<T> {
        double of(T choice);
    }

    private static <T> T chosen(
            List<T> all, Measure<T> measure, double tolerance, OptionalDouble asked, String choices) {
        if (asked.isEmpty()) {
            throw new Refused("because", choices);
        }
        double wanted = asked.getAsDouble();
        return all.stream()
                .filter(choice -> Math.abs(measure.of(choice) - wanted)
                        <= tolerance * Math.max(Math.abs(measure.of(choice)), Math.abs(wanted)))
                .findFirst()
                .orElseThrow(() -> new Refused("setting", choices));
    }

    private List<Stimulus> stimuli(boolean step) {
        return permitted.stimuli().stream()
                .filter(stimulus -> stimulus.isStep() == step)
                .sorted(Comparator.comparingDouble(Stimulus::resolutionSeconds))
                .toList();
    }

    private String widths(boolean step) {
        List<String> all = stimuli(step).stream()
                .map(choice -> words.quantities().time(choice.resolutionSeconds()))
                .toList();
        return all.isEmpty() ? texts.say("settings.none") : String.join(", ", all);
    }

    private String velocities() {
        VelocityRule rule = permitted.velocity();
        return rule.isFixed()
                ? texts.say("settings.only", Quantities.number(rule.leastFraction(), 3))
                : texts.say(
                        "settings.between",
                        Quantities.number(rule.leastFraction(), 2),
                        Quantities.number(rule.mostFraction(), 2));
    }

    private String ranges() {
        return String.join(
                ", ",
                permitted.rangesMetres().stream()
                        .map(metres -> words.quantities().shortLength(metres))
                        .toList());
    }

    private String gains() {
        return String.join(
                ", ", permitted.gainsDecibels().stream().map(this::decibels).toList());
    }

    private String decibels(double gain) {
        return texts.say("settings.decibels", Quantities.significant(gain));
    }

    private String choices(String what, String all) {
        return texts.say("settings.choices." + what, all);
    }

    private String averages() {
        return String.join(
                ", ", permitted.averages().stream().map(String::valueOf).toList());
    }

    private String ends() {
        return String.join(", ", permitted.ends().stream().map(words::end).toList());
    }

    /** All settings and what each may be, a line each. */
    String table(Settings settings, LineEnd end) {
        String sent = words.quantities().time(settings.stimulus().resolutionSeconds());
        boolean step = settings.stimulus().isStep();
        StringBuilder out = new StringBuilder();
        line(out, "end", words.end(end), ends());
        if (!stimuli(false).isEmpty()) {
            line(out, "width", step ? texts.say("settings.noPulse") : sent, widths(false));
        }
        if (!stimuli(true).isEmpty()) {
            line(out, "step", step ? sent : texts.say("settings.noStep"), widths(true));
        }
        line(out, "velocity", Quantities.number(settings.velocityFraction(), 3), velocities());
        line(out, "range", words.quantities().shortLength(settings.rangeMetres()), ranges());
        line(out, "gain", decibels(settings.gainDecibels()), gains());
        line(out, "average", String.valueOf(settings.averages()), averages());
        return out.toString();
    }

    private void line(StringBuilder out, String name, String value, String choices) {
        String label = texts.say("settings.row." + name);
        out.append(String.format(Locale.ROOT, "  %-9s %-9s %s\n", label, value, texts.say("settings.may", choices)));
    }
}
