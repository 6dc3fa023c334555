// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** How a trace may be written. */
public enum TraceFormat {
    CSV,
    JSON,
    TEXT,
    PNG,
    SVG,
    PDF;

    /** The format asked for, or the one that a file's name asks for, or CSV. */
    public static TraceFormat of(Optional<TraceFormat> asked, Optional<Path> file) {
        if (asked.isPresent()) {
            return asked.get();
        }
        String name = file.map(Path::toString).orElse("").toLowerCase(Locale.ROOT);
        for (TraceFormat format : values()) {
            if (name.endsWith("." + format) || (format == TEXT && name.endsWith(".txt"))) {
                return format;
            }
        }
        return CSV;
    }

    public boolean isPicture() {
        return this == PNG || this == SVG || this == PDF;
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
