package cablewright.ui.commandline;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.network.CableNotices;
import cablewright.simulator.notice.Notice;
import cablewright.ui.words.Quantities;
import java.util.List;

/** Says where a model is used near or outside the range in which it holds. */
final class NoticeLines {

    private final Quantities quantities;

    NoticeLines(Quantities quantities) {
        this.quantities = quantities;
    }

    /** The notices of a cable for a band, a sentence each. */
    List<String> of(Cable cable, double topHertz) {
        return CableNotices.of(cable, topHertz).stream()
                .map(placed -> "note: from " + quantities.length(placed.startMetres()) + " to "
                        + quantities.length(placed.endMetres()) + ": " + sentence(placed.notice()))
                .toList();
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
