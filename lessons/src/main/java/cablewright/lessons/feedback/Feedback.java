// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.marking.Finding;
import cablewright.lessons.marking.MarkSheet;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
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
        if (finding instanceof Finding.Beside beside) {
            return nowhere(finding, beside.flag(), beside.flag().startMetres());
        }
        if (finding instanceof Finding.BranchFlagged branch) {
            return nowhere(finding, branch.flag(), branch.shownMetres());
        }
        return nothing(finding, sheet.attempt().settings().velocityFraction());
    }

    private TraineeView view(LineEnd from, Settings settings) {
        return views.computeIfAbsent(from + " " + settings, key -> new TraineeView(exercise, settings, from, memory));
    }

    /** What a flag was read with. */
    private TraineeView view(Flag flag) {
        Settings settings = sheet.attempt().settings().withVelocityFraction(flag.velocityFraction());
        return view(flag.end(), settings.withStimulus(flag.stimulus().orElse(settings.stimulus())));
    }

    private FindingReasons matched(Finding.Matched finding) {
        Flag flag = finding.flag();
        Optional<Event> real = finding.event().on(exercise.cable());
        if (real.isEmpty()) {
            return nothing(finding, flag.velocityFraction());
        }
        Event event = real.get();
        TraineeView view = view(flag);
        Claims claims = new Claims(view, event.id());
        boolean wrongKind = finding.children().stream().anyMatch(Finding.WrongKind.class::isInstance);
        Optional<KindComparison> comparison = wrongKind ? view.comparison(flag.kind(), event) : Optional.empty();
        List<Claim> said = new ArrayList<>(claims.shape(exercise.cable().seenFrom(flag.end())));
        comparison.ifPresent(found -> said.add(claims.comparison(found)));
        int before = said.size();
        for (Finding child : finding.children()) {
            if (child instanceof Finding.WrongPlace wrong) {
                said.addAll(claims.place(wrong.place()));
            } else if (child instanceof Finding.WrongPlaceByVelocity wrong) {
                said.addAll(claims.place(wrong.place()));
            }
        }
        if (comparison.isEmpty() && said.size() == before) {
            said.addAll(claims.delay());
        }
        return new FindingReasons(
                finding, flag.velocityFraction(), said, view.lookHere(view.echoes(event.id())), comparison);
    }

    private FindingReasons event(Finding finding, LineEvent missed) {
        double velocity = sheet.attempt().settings().velocityFraction();
        Optional<Event> real = missed.on(exercise.cable());
        if (real.isEmpty()) {
            return nothing(finding, velocity);
        }
        String eventId = real.get().id();
        TraineeView view = view(end, sheet.attempt().settings());
        Claims claims = new Claims(view, eventId);
        List<Claim> said = new ArrayList<>(claims.shape(exercise.cable().seenFrom(end)));
        if (finding instanceof Finding.Missed) {
            said.addAll(claims.seen());
        }
        return new FindingReasons(finding, velocity, said, view.lookHere(view.echoes(eventId)), Optional.empty());
    }

    private static FindingReasons nothing(Finding finding, double velocityFraction) {
        return new FindingReasons(finding, velocityFraction, List.of(), List.of(), Optional.empty());
    }

    private FindingReasons nowhere(Finding finding, Flag flag, double metres) {
        TraineeView view = view(flag);
        return new FindingReasons(
                finding, flag.velocityFraction(), List.of(), List.of(view.about(metres)), Optional.empty());
    }
}
