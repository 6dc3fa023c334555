// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.compile.CableProfile.Piece;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.material.PhysicalConstants;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A cable laid out under its trace: everything stands where the trace shows it, at the velocity that is set, so that a
 * vertical line means the same place in both. Where the set velocity is wrong, or water slows the wave, this is not the
 * true distance; the true one travels along for the labels.
 *
 * @param stretches pieces of equal cross-section, in order; the test lead is among them
 * @param marks the events, in order of their start
 * @param cuts the places worth looking at across the cable
 * @param farEnd what the line ends in, as met from the tested end
 * @param endShownMetres where the trace shows the end [m]
 */
public record CableDrawing(
        List<Stretch> stretches, List<Mark> marks, List<Cut> cuts, FarEnd farEnd, double endShownMetres) {

    /** Copies the lists. */
    public CableDrawing {
        stretches = List.copyOf(stretches);
        marks = List.copyOf(marks);
        cuts = List.copyOf(cuts);
    }

    /**
     * A piece of equal cross-section.
     *
     * @param shownFromMetres where the trace shows its start [m]
     * @param shownToMetres where the trace shows its end [m]
     * @param section its cross-section
     * @param isLead whether it is the test lead, which is no part of the cable
     */
    public record Stretch(double shownFromMetres, double shownToMetres, CrossSection section, boolean isLead) {}

    /**
     * An event.
     *
     * @param event the event, with distances from the tested end
     * @param shownFromMetres where the trace shows its start [m]
     * @param shownToMetres where the trace shows its end [m]; its start again for a thing at one place
     */
    public record Mark(Event event, double shownFromMetres, double shownToMetres) {}

    /**
     * A look across the cable.
     *
     * @param shownMetres where [m]
     * @param section the cross-section there
     * @param event the condition that made it; absent for the cable as made
     */
    public record Cut(double shownMetres, CrossSection section, Optional<LineCondition> event) {}

    /**
     * Lays a cable out.
     *
     * @param cable the cable, with distances from its near end
     * @param end the end that is tested
     * @param velocityFraction velocity that is set, over that of light
     * @param topHertz top of the band in use; profiles are drawn in the steps that serve it [Hz]
     * @return the drawing
     */
    public static CableDrawing of(Cable cable, LineEnd end, double velocityFraction, double topHertz) {
        Cable tested = cable.seenFrom(end);
        CableProfile profile = CableProfile.of(tested, topHertz);
        double speed = velocityFraction * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        List<Stretch> stretches = new ArrayList<>();
        for (Piece piece : profile.pieces()) {
            boolean lead = piece.madeBy().contains(CableCompiler.TEST_LEAD);
            stretches.add(new Stretch(speed * piece.startSeconds(), speed * piece.endSeconds(), piece.section(), lead));
        }
        List<Mark> marks = tested.events().stream()
                .sorted(Comparator.comparingDouble(Event::startMetres))
                .map(event -> new Mark(
                        event,
                        speed * profile.secondsTo(event.startMetres()),
                        speed * profile.secondsTo(event.endMetres())))
                .toList();
        double endShown = speed * profile.secondsTo(tested.lengthMetres());
        return new CableDrawing(stretches, marks, cuts(profile, marks, speed), tested.farEnd(), endShown);
    }

    private static List<Cut> cuts(CableProfile profile, List<Mark> marks, double speed) {
        List<Cut> cuts = new ArrayList<>();
        profile.pieces().stream()
                .filter(piece -> piece.madeBy().isEmpty())
                .max(Comparator.comparingDouble(piece -> piece.endSeconds() - piece.startSeconds()))
                .ifPresent(piece -> cuts.add(cut(piece, speed, Optional.empty())));
        for (Mark mark : marks) {
            if (mark.event() instanceof LineCondition) {
                LineCondition condition = (LineCondition) mark.event();
                double made = sound(profile, condition);
                profile.pieces().stream()
                        .filter(piece -> piece.madeBy().contains(condition.id()))
                        .max(Comparator.comparingDouble(
                                piece -> Math.abs(piece.section().impedanceOhms() - made)))
                        .ifPresent(piece -> cuts.add(cut(piece, speed, Optional.of(condition))));
            }
        }
        cuts.sort(Comparator.comparingDouble(Cut::shownMetres));
        return cuts;
    }

    private static Cut cut(Piece piece, double speed, Optional<LineCondition> event) {
        return new Cut(speed * (piece.startSeconds() + piece.endSeconds()) / 2, piece.section(), event);
    }

    /** Impedance of sound cable, or else of the whole cable's start. */
    private static double sound(CableProfile profile, LineCondition condition) {
        return profile.pieces().stream()
                .filter(piece -> piece.madeBy().isEmpty() && piece.startMetres() <= condition.startMetres())
                .reduce((first, second) -> second)
                .orElse(profile.pieces().get(0))
                .section()
                .impedanceOhms();
    }

    /**
     * Returns the impedance of most of the cable.
     *
     * @return impedance of the longest piece [Ω]
     */
    public double usualOhms() {
        return stretches.stream()
                .filter(stretch -> !stretch.isLead())
                .max(Comparator.comparingDouble(stretch -> stretch.shownToMetres() - stretch.shownFromMetres()))
                .orElseThrow()
                .section()
                .impedanceOhms();
    }
}
