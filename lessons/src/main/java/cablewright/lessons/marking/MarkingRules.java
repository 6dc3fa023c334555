// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.PartMarks;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.material.PhysicalConstants;

/** The figures of marking, all in one place. They are ours (common practice, no source). */
public final class MarkingRules {

    /** Marks for the place of an event. */
    public static final double PLACE_MARKS = PartMarks.USUAL.placeMarks();

    /** Marks for its kind. */
    public static final double KIND_MARKS = PartMarks.USUAL.kindMarks();

    /** Marks for its verdict. */
    public static final double VERDICT_MARKS = PartMarks.USUAL.verdictMarks();

    /** Marks of one event. */
    public static final double EVENT_MARKS = PLACE_MARKS + KIND_MARKS + VERDICT_MARKS;

    /** Marks for a right prediction. */
    public static final double PREDICTION_MARKS = 10;

    /** Share of them for a right answer for which another reason was chosen. */
    public static final double ANSWER_WITHOUT_REASON = 0.5;

    /** What a needless dig costs. */
    public static final double DIG_COST_MARKS = 5;

    /** What a flag costs that says something is where nothing is, whatever its verdict. */
    public static final double STRAY_COST_MARKS = 3;

    /** Share of a place's marks for the right edge at a wrong velocity: read well, and dug up beside the true place. */
    public static final double RIGHT_EDGE_SHARE = 0.5;

    /** Velocities that differ by less are the same. */
    static final double SAME_VELOCITY_SHARE = 1e-3;

    /** Share of what a flagged stretch and a true one cover together that both must cover, so that the one stands for the other. */
    static final double LEAST_OVERLAP = 0.2;

    /** Tolerances at which a place earns nothing more, and beyond which a flag does not stand for an event. */
    public static final double NO_MATCH_TOLERANCES = 3;

    /** Least tolerance [m]. */
    public static final double LEAST_TOLERANCE_METRES = 0.3;

    /** Share of the distance that is tolerated. */
    public static final double TOLERANCE_SHARE = 0.01;

    private static final double[] KIND_SHARE_BY_AGREEMENT = {0, 0, 0, 1.0 / 3, 2.0 / 3};

    private MarkingRules() {}

    /**
     * Returns how near a place must be to count in full: what the exercise says, or else the larger of half of the shortest
     * permitted pulse (or rise), 1 % of the distance, 0.3 m.
     *
     * @param exercise the exercise
     * @param velocityFraction velocity factor used to convert time to distance, over that of light
     * @param metres the distance [m]
     * @return tolerance [m]
     */
    public static double toleranceMetres(Exercise exercise, double velocityFraction, double metres) {
        double pulse = exercise.permitted().narrowestStimulus().resolutionSeconds();
        double usual = Math.max(
                metresThereAndBack(pulse, velocityFraction),
                Math.max(TOLERANCE_SHARE * metres, LEAST_TOLERANCE_METRES));
        return exercise.toleranceMetres().orElse(usual);
    }

    /**
     * Returns the share of a place's marks that is earned: all within one tolerance, none from three on, straight in between.
     *
     * @param errorMetres how far off it is [m]
     * @param toleranceMetres tolerance [m]
     * @return 0 to 1
     */
    public static double placeShare(double errorMetres, double toleranceMetres) {
        double far = errorMetres / toleranceMetres;
        return Math.max(0, Math.min(1, (NO_MATCH_TOLERANCES - far) / (NO_MATCH_TOLERANCES - 1)));
    }

    /**
     * Returns the share of the marks for a kind: all for the right one, two thirds for one of the same signature, a third
     * where one mark of the signature differs.
     *
     * @param flagged the kind that was flagged
     * @param truth the kind that it is
     * @return 0 to 1
     */
    public static double kindShare(EventKind flagged, EventKind truth) {
        return flagged == truth ? 1 : KIND_SHARE_BY_AGREEMENT[agreement(flagged, truth)];
    }

    /** For the end of the line, an open or short is as right a word as "end" where it is one. */
    static boolean isEnd(EventKind flagged, LineEvent event, FarEnd farEnd) {
        return event.kind() == EventKind.END
                && ((flagged == EventKind.OPEN && farEnd instanceof FarEnd.Open)
                        || (flagged == EventKind.SHORT && farEnd instanceof FarEnd.Short));
    }

    static int agreement(EventKind flagged, EventKind truth) {
        return flagged.signature().agreementWith(truth.signature());
    }

    static double metresThereAndBack(double seconds, double velocityFraction) {
        return seconds * velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND / 2;
    }
}
