// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.explanation.CableNotices;
import cablewright.simulator.notice.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says where a model is used near or outside its range of validity. */
public final class NoticeWords {

    private final Words words;
    private final Quantities quantities;

    /**
     * Takes language and unit.
     *
     * @param words the language and the unit of lengths
     */
    public NoticeWords(Words words) {
        this.words = words;
        this.quantities = words.quantities();
    }

    private String notice(String key, Object... arguments) {
        return words.texts().say("notice." + key, arguments);
    }

    /**
     * Writes the notices of a cable.
     *
     * @param cable the cable
     * @param topHertz top of the band in use [Hz]
     * @return a sentence each, in order of place
     */
    public List<String> of(Cable cable, double topHertz) {
        List<String> sentences = new ArrayList<>();
        for (CableNotices.Placed placed : CableNotices.of(cable, topHertz)) {
            sentences.add(notice(
                    "place",
                    quantities.length(placed.startMetres()),
                    quantities.length(placed.endMetres()),
                    sentence(placed.notice())));
        }
        return sentences;
    }

    /**
     * Writes the notices of a cable, and the error of taking gradual changes in steps, which takes two more solutions.
     *
     * @param cable the cable
     * @param topHertz top of the band in use [Hz]
     * @return a sentence each
     */
    public List<String> withSteps(Cable cable, double topHertz) {
        List<String> sentences = of(cable, topHertz);
        steps(cable, topHertz).ifPresent(sentences::add);
        return sentences;
    }

    /** Found by halving the steps; empty where nothing is gradual, or where the halves would be too many. */
    private Optional<String> steps(Cable cable, double topHertz) {
        boolean gradual = cable.events().stream()
                .filter(LineCondition.class::isInstance)
                .anyMatch(event -> Double.isFinite(((LineCondition) event).longestStepMetres()));
        if (!gradual) {
            return Optional.empty();
        }
        double[] hertz = {topHertz / 10, topHertz / 3, topHertz};
        double error;
        try {
            error = 4.0 / 3 * CableNotices.profileStepError(cable, ProfileSteps.forSweepTo(topHertz), hertz);
        } catch (IllegalArgumentException tooManyPieces) {
            return Optional.empty();
        }
        return Optional.of(notice("steps", Quantities.significant(1e6 * error)));
    }

    private String sentence(Notice notice) {
        String key = Words.word(notice.kind());
        return switch (notice.kind()) {
            case HIGHER_MODES, PAIR_RADIATES, ABOVE_FITTED_RANGE ->
                notice(key, frequency(notice.value()), frequency(notice.limit()));
            case POOR_FIT -> notice(key, Quantities.number(100 * notice.value(), 1));
            case STRONG_CROWDING -> notice(key, Quantities.significant(notice.value()));
            case BENT_TOO_TIGHTLY ->
                notice(key, quantities.shortLength(notice.value()), quantities.shortLength(notice.limit()));
            case THIN_SHIELD, EQUIVALENT_GEOMETRY, FILM_ON_OFF_CENTRE_CORE -> notice(key);
        };
    }

    private static String frequency(double hertz) {
        return hertz >= 1e9
                ? Quantities.significant(hertz / 1e9) + " GHz"
                : Quantities.significant(hertz / 1e6) + " MHz";
    }
}
