// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import java.util.Locale;

/** How a list may be written. */
public enum ListFormat {
    TEXT,
    CSV,
    JSON;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
