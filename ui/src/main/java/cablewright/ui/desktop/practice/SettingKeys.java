// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.ui.desktop.practice.model.Setting;
import cablewright.ui.desktop.practice.model.SettingsViewModel;
import java.util.Map;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The keys of the instrument's settings, the same on every screen: a letter steps one up, with Shift down. */
public final class SettingKeys {

    private static final Map<KeyCode, Setting> SETTINGS = Map.of(
            KeyCode.E, Setting.END,
            KeyCode.S, Setting.SHAPE,
            KeyCode.P, Setting.WIDTH,
            KeyCode.V, Setting.VELOCITY,
            KeyCode.R, Setting.RANGE,
            KeyCode.G, Setting.GAIN,
            KeyCode.A, Setting.AVERAGES);

    private SettingKeys() {}

    /**
     * Acts on a key.
     *
     * @param event the key, without Alt and Ctrl
     * @param settings the settings
     * @return whether the key stands for a setting
     */
    public static boolean pressed(KeyEvent event, SettingsViewModel settings) {
        Setting setting = SETTINGS.get(event.getCode());
        if (setting == null) {
            return false;
        }
        if (settings.isFree(setting)) {
            settings.step(setting, event.isShiftDown() ? -1 : 1);
        }
        return true;
    }
}
