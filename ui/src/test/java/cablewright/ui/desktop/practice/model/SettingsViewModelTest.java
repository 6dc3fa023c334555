// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.ui.desktop.shell.Examples;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SettingsViewModelTest {

    private final Exercise exercise = Examples.exercise("x", Optional.empty());
    private final SettingsViewModel settings = new SettingsViewModel(exercise.permitted(), exercise.start());

    @Property
    void noRowOfKeysLeavesWhatIsPermitted(@ForAll @Size(max = 40) List<Setting> steps, @ForAll boolean back) {
        for (Setting setting : steps) {
            settings.step(setting, back ? -1 : 1);
            assertTrue(exercise.permitted()
                    .allows(settings.settings(), settings.endProperty().get()));
        }
    }

    @Test
    void theWidthKeyStaysWithPulsesWhilePulsesAreSent() {
        assertEquals(2, settings.widths().size());
        settings.step(Setting.WIDTH, 1);
        assertEquals(20e-9, settings.stimulusProperty().get().widthSeconds(), 1e-12);
        settings.step(Setting.WIDTH, 1);
        assertEquals(5e-9, settings.stimulusProperty().get().widthSeconds(), 1e-12);
    }

    @Test
    void theShapeKeyGoesToAStepAndComesBack() {
        settings.step(Setting.SHAPE, 1);
        assertTrue(settings.stimulusProperty().get().isStep());
        settings.step(Setting.SHAPE, 1);
        assertEquals(5e-9, settings.stimulusProperty().get().widthSeconds(), 1e-12);
    }

    @Test
    void theVelocityStopsAtItsBounds() {
        for (int i = 0; i < 100; i++) {
            settings.step(Setting.VELOCITY, 1);
        }
        assertEquals(0.95, settings.velocityProperty().get(), 1e-12);
        settings.setVelocity(-3);
        assertEquals(0.70, settings.velocityProperty().get(), 1e-12);
    }
}
