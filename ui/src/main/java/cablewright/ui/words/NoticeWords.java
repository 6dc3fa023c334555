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

/** Says where a model is used near or outside the range in which it holds. */
public final class NoticeWords {

    private final Quantities quantities;

    /**
     * Takes the unit of lengths.
     *
     * @param quantities how lengths are told
     */
    public NoticeWords(Quantities quantities) {
        this.quantities = quantities;
    }

    /**
     * Tells the notices of a cable.
     *
     * @param cable the cable
     * @param topHertz top of the band in use [Hz]
     * @return a sentence each, in order of place
     */
    public List<String> of(Cable cable, double topHertz) {
        List<String> sentences = new ArrayList<>();
        for (CableNotices.Placed placed : CableNotices.of(cable, topHertz)) {
            sentences.add("from " + quantities.length(placed.startMetres()) + " to "
                    + quantities.length(placed.endMetres()) + ": " + sentence(placed.notice()));
        }
        return sentences;
    }

    /**
     * Tells the notices of a cable, and what taking gradual changes in steps does, which takes two solutions more.
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

    /** By halving the steps; nothing where nothing is gradual, or where halves would be too many. */
    private static Optional<String> steps(Cable cable, double topHertz) {
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
        return Optional.of("gradual changes are taken in steps; by halving them, these change what comes back by "
                + Quantities.significant(1e6 * error) + " millionths");
    }

    private String sentence(Notice notice) {
        String value = Quantities.significant(notice.value());
        return switch (notice.kind()) {
            case HIGHER_MODES ->
                "the band reaches " + frequency(notice.value()) + ", above the first higher mode of this coax at "
                        + frequency(notice.limit());
            case PAIR_RADIATES ->
                "the band reaches " + frequency(notice.value()) + "; above " + frequency(notice.limit())
                        + " the pair is too wide not to radiate";
            case THIN_SHIELD -> "the shield is thinner than the skin depth; what leaks through it is left out";
            case ABOVE_FITTED_RANGE ->
                "the band reaches " + frequency(notice.value()) + "; the data sheet ends at "
                        + frequency(notice.limit());
            case POOR_FIT ->
                "the fit misses the data sheet by " + Quantities.number(100 * notice.value(), 1) + " % on average";
            case EQUIVALENT_GEOMETRY -> "only the data sheet is known; conditions act on an equivalent geometry";
            case STRONG_CROWDING ->
                "current crowds on one side of a conductor by a factor of " + value
                        + "; its loss between rest and full skin effect is a few per cent off";
            case FILM_ON_OFF_CENTRE_CORE -> "a film of water around an off-centre core is weighed as if concentric";
            case BENT_TOO_TIGHTLY ->
                "the bend has a radius of " + quantities.shortLength(notice.value()) + "; below "
                        + quantities.shortLength(notice.limit()) + " the cable folds";
        };
    }

    private static String frequency(double hertz) {
        return hertz >= 1e9
                ? Quantities.significant(hertz / 1e9) + " GHz"
                : Quantities.significant(hertz / 1e6) + " MHz";
    }
}
