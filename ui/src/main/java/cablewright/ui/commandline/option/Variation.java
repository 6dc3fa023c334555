// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.option;

import cablewright.lessons.study.Parameter;
import cablewright.lessons.study.StudySetting;
import cablewright.ui.quantity.Quantity;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what a study varies: {@code NAME=FROM..TO}, with {@code :COUNT} and {@code :log} behind it where wanted. */
public final class Variation implements ITypeConverter<Parameter> {

    public static final String FORM =
            "NAME=FROM..TO:COUNT, such as pulse=2ns..100ns:10:log or " + "/cable/events/p1/depthFraction=0.1..0.8:8";

    private static final Pattern WHOLE = Pattern.compile("([^=]+)=(.+?)\\.\\.(.+?)(?::([0-9]{1,6}))?(:log)?");
    private static final Map<String, StudySetting> SETTINGS = Map.of(
            "pulse", StudySetting.PULSE,
            "step", StudySetting.STEP,
            "velocity", StudySetting.VELOCITY,
            "range", StudySetting.RANGE,
            "gain", StudySetting.GAIN,
            "averages", StudySetting.AVERAGES);
    private static final Map<StudySetting, Quantity> QUANTITIES = Map.of(
            StudySetting.PULSE, Quantity.TIME,
            StudySetting.STEP, Quantity.TIME,
            StudySetting.VELOCITY, Quantity.VELOCITY,
            StudySetting.RANGE, Quantity.LENGTH,
            StudySetting.GAIN, Quantity.LEVEL);

    @Override
    public Parameter convert(String text) {
        Matcher matcher = WHOLE.matcher(text.strip());
        if (!matcher.matches()) {
            throw new TypeConversionException("\"" + text + "\" is not a variation; write " + FORM);
        }
        String name = matcher.group(1).strip();
        Optional<StudySetting> setting = Optional.ofNullable(SETTINGS.get(name));
        int count = matcher.group(4) == null ? 1 : Integer.parseInt(matcher.group(4));
        try {
            return new Parameter(
                    setting.map(StudySetting::column).orElse(name),
                    value(setting, matcher.group(2)),
                    value(setting, matcher.group(3)),
                    count,
                    matcher.group(5) != null);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    /** Settings take units; numbers of the file are as in the file. */
    private static double value(Optional<StudySetting> setting, String text) {
        Optional<Quantity> quantity = setting.map(QUANTITIES::get);
        if (quantity.isPresent()) {
            return quantity.get().parse(text);
        }
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not a number; a path's values are plain numbers as in the cable file", e);
        }
    }
}
