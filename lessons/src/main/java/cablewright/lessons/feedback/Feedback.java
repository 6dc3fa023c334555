// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.MarkSheet;
import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.solve.PropagationCache;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The reasons behind a mark sheet, worked out from the trace that the trainee had before the eyes: what was set when the
 * flags were handed in, from the end of which each flag was read.
 */
public final class Feedback {

    /** A flag stands at a top if it is twice as near to it as to the front. */
    private static final double AT_THE_TOP_SHARE = 0.5;

    private final Exercise exercise;
    private final MarkSheet sheet;
    private final LineEnd end;
    private final BooleanSupplier cancelled;
    private final PropagationCache memory = new PropagationCache();
    private final Map<String, TraineeView> views = new HashMap<>();

    private Feedback(Exercise exercise, MarkSheet sheet, LineEnd end, BooleanSupplier cancelled) {
        this.exercise = exercise;
        this.sheet = sheet;
        this.end = end;
        this.cancelled = cancelled;
    }

    /**
     * Works out the reasons. It takes some tens of traces.
     *
     * @param exercise the exercise
     * @param sheet the marks
     * @param end the end that was tested when the flags were handed in; for what no flag stands for
     * @param cancelled asked before each finding
     * @return one for each finding of the sheet, in its order
     * @throws CancellationException if it was cancelled
     */
    public static List<FindingReasons> of(Exercise exercise, MarkSheet sheet, LineEnd end, BooleanSupplier cancelled) {
        return new Feedback(exercise, sheet, end, cancelled).all();
    }

    private List<FindingReasons> all() {
        List<FindingReasons> all = new ArrayList<>();
        for (Finding finding : sheet.findings()) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("working out the reasons was cancelled");
            }
            all.add(reasons(finding));
        }
        return all;
    }

    private FindingReasons reasons(Finding finding) {
        if (finding instanceof Finding.Matched matched) {
            return matched(matched);
        }
        if (finding instanceof Finding.Missed missed) {
            return event(finding, missed.event());
        }
        if (finding instanceof Finding.HiddenEvent event) {
            return event(finding, event.event());
        }
        if (finding instanceof Finding.GhostTakenForEvent ghost) {
            return nowhere(finding, ghost.flag(), ghost.shownMetres());
        }
        if (finding instanceof Finding.NothingThere there) {
            Flag flag = there.flag();
            return nowhere(finding, flag, flag.startMetres());
        }
        double velocity = sheet.attempt().settings().velocityFraction();
        return new FindingReasons(finding, velocity, List.of(), List.of(), Optional.empty(), List.of());
    }

    private TraineeView view(LineEnd from, double velocityFraction) {
        Settings settings = sheet.attempt().settings().withVelocityFraction(velocityFraction);
        return views.computeIfAbsent(
                from + "@" + velocityFraction, key -> new TraineeView(exercise, settings, from, memory));
    }

    private FindingReasons matched(Finding.Matched finding) {
        Flag flag = finding.flag();
        TraineeView view = view(flag.end(), flag.velocityFraction());
        List<EchoFacts> echoes = view.echoes(finding.event().eventId());
        Optional<Event> event = exercise.cable().event(finding.event().eventId());
        boolean wrongKind = finding.children().stream().anyMatch(Finding.WrongKind.class::isInstance);
        Optional<KindComparison> comparison =
                wrongKind ? event.flatMap(real -> view.comparison(flag, real, echoes)) : Optional.empty();
        return new FindingReasons(
                finding,
                flag.velocityFraction(),
                echoes,
                view.lookHere(echoes),
                comparison,
                places(finding, flag, echoes));
    }

    private static List<PlaceReason> places(Finding.Matched finding, Flag flag, List<EchoFacts> echoes) {
        List<PlaceReason> places = new ArrayList<>();
        for (Finding child : finding.children()) {
            if (child instanceof Finding.WrongPlace place1) {
                places.add(place(place1.place(), flag, echoes));
            } else if (child instanceof Finding.WrongPlaceByVelocity velocity) {
                PlaceMark place = velocity.place();
                places.add(reason(place, flag, PlaceReason.Cause.VELOCITY, topNear(place, echoes)));
            }
        }
        return places;
    }

    private static PlaceReason place(PlaceMark place, Flag flag, List<EchoFacts> echoes) {
        double top = topNear(place, echoes);
        double fromTop = Math.abs(place.flaggedMetres() - top);
        double fromFront = Math.abs(place.flaggedMetres() - place.readMetres());
        boolean atTheTop = fromTop <= place.toleranceMetres() && fromTop < AT_THE_TOP_SHARE * fromFront;
        return reason(place, flag, atTheTop ? PlaceReason.Cause.TOP_NOT_FRONT : PlaceReason.Cause.READING, top);
    }

    /** The top of the echo, of either lobe, that lies nearest to the flag. */
    private static double topNear(PlaceMark place, List<EchoFacts> echoes) {
        double top = place.readMetres();
        double nearest = Double.POSITIVE_INFINITY;
        for (EchoFacts fact : echoes) {
            for (double one :
                    new double[] {fact.echo().firstTopMetres(), fact.echo().secondTopMetres()}) {
                double apart = Math.abs(one - place.flaggedMetres());
                top = apart < nearest ? one : top;
                nearest = Math.min(nearest, apart);
            }
        }
        return top;
    }

    private static PlaceReason reason(PlaceMark place, Flag flag, PlaceReason.Cause cause, double top) {
        double velocity = flag.velocityFraction();
        return new PlaceReason(
                place,
                cause,
                velocity,
                place.readMetres() > 0 ? velocity * place.flaggedMetres() / place.readMetres() : velocity,
                2
                        * (place.flaggedMetres() - place.readMetres())
                        / (velocity * PhysicalConstants.LIGHT_METRES_PER_SECOND),
                top);
    }

    private FindingReasons event(Finding finding, LineEvent event) {
        double velocity = sheet.attempt().settings().velocityFraction();
        TraineeView view = view(end, velocity);
        List<EchoFacts> echoes = view.echoes(event.eventId());
        return new FindingReasons(finding, velocity, echoes, view.lookHere(echoes), Optional.empty(), List.of());
    }

    private FindingReasons nowhere(Finding finding, Flag flag, double metres) {
        TraineeView view = view(flag.end(), flag.velocityFraction());
        return new FindingReasons(
                finding, flag.velocityFraction(), List.of(), List.of(view.about(metres)), Optional.empty(), List.of());
    }
}
