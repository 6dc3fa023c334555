// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.UsualView;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Permitted;
import cablewright.simulator.explanation.visibility.Suggestion;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What is set on the Bench, as the exercise changes under it. */
final class SettingsOnBench {

    private SettingsOnBench() {}

    /** Begins with what an exercise begins with. */
    static void start(SettingsViewModel settings, Exercise exercise) {
        settings.permit(UsualView.onTheBench(exercise));
        settings.endProperty().set(exercise.start().end());
        settings.use(exercise.start().settings());
    }

    /** Follows an exercise that changed: what was set as it began stays so; what somebody set stays where it can. */
    static void follow(SettingsViewModel settings, Exercise before, Exercise after) {
        Settings set = settings.settings();
        Settings old = before.start().settings();
        Settings now = after.start().settings();
        Permitted choices = UsualView.onTheBench(after);
        if (!choices.equals(UsualView.onTheBench(before))) {
            settings.permit(choices);
        }
        if (old.equals(now)) {
            return;
        }
        if (set.stimulus().equals(old.stimulus())) {
            settings.stimulusProperty().set(now.stimulus());
        }
        if (set.velocityFraction() == old.velocityFraction()) {
            settings.velocityProperty().set(now.velocityFraction());
        }
        if (set.rangeMetres() == old.rangeMetres()) {
            settings.rangeMetresProperty().set(now.rangeMetres());
        }
    }

    /** Sets what was suggested, and adds it to the choices where they lack it. */
    static void take(SettingsViewModel settings, Suggestion suggestion) {
        Settings wanted = suggestion.settings();
        Permitted now = settings.permitted();
        List<Stimulus> stimuli = new ArrayList<>(now.stimuli());
        if (!stimuli.contains(wanted.stimulus())) {
            if (stimuli.size() == Permitted.MOST_CHOICES) {
                stimuli.remove(stimuli.size() - 1);
            }
            stimuli.add(wanted.stimulus());
        }
        settings.permit(new Permitted(
                stimuli,
                now.velocity(),
                with(now.rangesMetres(), wanted.rangeMetres()),
                with(now.gainsDecibels(), wanted.gainDecibels()),
                with(now.averages(), wanted.averages()),
                now.ends()));
        settings.endProperty().set(suggestion.end());
        settings.use(wanted);
    }

    private static <T extends Comparable<T>> List<T> with(List<T> rising, T one) {
        TreeSet<T> all = new TreeSet<>(rising);
        all.add(one);
        while (all.size() > Permitted.MOST_CHOICES) {
            all.remove(all.first().equals(one) ? all.last() : all.first());
        }
        return List.copyOf(all);
    }
}
