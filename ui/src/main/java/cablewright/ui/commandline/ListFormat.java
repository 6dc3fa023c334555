package cablewright.ui.commandline;

import java.util.Locale;

/** How a list may be written. */
enum ListFormat {
    TEXT,
    CSV,
    JSON;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
