// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.feedback;

import cablewright.lessons.marking.PlaceMark;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.explanation.EventEcho;
import cablewright.simulator.explanation.LineEffect;
import cablewright.simulator.explanation.visibility.Visibility;
import cablewright.simulator.instrument.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** States what is true of one event on one trainee's trace. */
final class Claims {

    /** A flag stands at a top if it is twice as near to it as to the edge. */
    private static final double AT_THE_TOP_SHARE = 0.5;

    /** Lateness under this is not mentioned [m]. */
    private static final double LEAST_LATE_METRES = 0.05;

    private final TraineeView view;
    private final String eventId;
    private final List<EchoFacts> facts;
    private final List<EchoFacts> shown;
    private final Settings settings;
    private final LineEnd end;

    Claims(TraineeView view, String eventId) {
        this.view = view;
        this.eventId = eventId;
        this.facts = view.echoes(eventId);
        this.shown = facts.stream()
                .filter(fact -> fact.visibility() != Visibility.HIDDEN)
                .toList();
        this.settings = view.settings();
        this.end = view.end();
    }

    /** What the trace does at each place that shows, and what the line does there; or why nothing shows. */
    List<Claim> shape(Cable tested) {
        List<Claim> claims = new ArrayList<>();
        if (facts.isEmpty()) {
            claims.add(new Claim.BeyondRange(eventId, settings, end));
        } else if (shown.isEmpty()) {
            notClear(facts.get(0)).ifPresent(claims::add);
        }
        for (EchoFacts fact : shown) {
            claims.add(goes(fact.echo()));
            LineEffect.of(tested, eventId, facts.size(), facts.indexOf(fact))
                    .ifPresent(effect -> claims.add(new Claim.LineIs(eventId, effect, end)));
        }
        return claims;
    }

    /** Where the wave first meets the event, or the farther edge of a stretch that shows two [m], from the near end. */
    private double placeOf(EventEcho echo) {
        return facts.size() == 1 ? view.firstMetMetres(eventId) : echo.trueMetres();
    }

    private Claim goes(EventEcho echo) {
        return new Claim.TraceGoes(
                eventId,
                placeOf(echo),
                echo.shownMetres(),
                echo.firstVolts(),
                echo.swingsBack() ? OptionalDouble.of(echo.secondVolts()) : OptionalDouble.empty(),
                settings.stimulus().isStep() && echo.stays(),
                settings,
                end);
    }

    private Optional<Claim> notClear(EchoFacts fact) {
        return fact.reason()
                .map(reason -> new Claim.NotClear(
                        eventId,
                        placeOf(fact.echo()),
                        reason,
                        fact.contrastVolts(),
                        fact.noiseVolts(),
                        fact.other(),
                        settings,
                        end));
    }

    /** Of an event that was missed: what the trace read, and why it was hard to see, if it was. */
    List<Claim> seen() {
        List<Claim> claims = new ArrayList<>();
        if (!shown.isEmpty()) {
            EchoFacts first = shown.get(0);
            claims.add(new Claim.TraceReads(
                    first.echo().firstTopMetres(), first.seenVolts(), first.withoutNoiseVolts(), settings, end));
            notClear(first).ifPresent(claims::add);
        }
        return claims;
    }

    List<Claim> delay() {
        return shown.stream()
                .limit(1)
                .map(fact -> fact.echo())
                .map(echo -> (Claim) new Claim.WaveIsBack(
                        eventId,
                        placeOf(echo),
                        echo.thereAndBackSeconds(),
                        settings.velocityFraction(),
                        echo.shownMetres(),
                        end))
                .toList();
    }

    Claim comparison(KindComparison comparison) {
        if (comparison.nearest().goesOtherWay()) {
            double first = comparison.nearest().firstVolts();
            return new Claim.OtherWay(eventId, comparison.nearest().kind(), first, settings, end);
        }
        return comparison.canBeTold()
                ? new Claim.StillOff(eventId, comparison, settings, end)
                : new Claim.LooksAlike(eventId, comparison, settings, end);
    }

    /** Where a misread place shows, and what the flag stands at instead, where that is known. */
    List<Claim> place(PlaceMark place) {
        List<Claim> claims = new ArrayList<>();
        Optional<EventEcho> echo = echoOf(place);
        if (echo.isEmpty()) {
            return claims;
        }
        boolean late = Math.abs(place.lateMetres()) >= LEAST_LATE_METRES;
        boolean byLoss = late && place.lateMetres() > 0 && view.isLateByLoss(echo.get(), place.lateMetres());
        claims.add(new Claim.PlaceShows(eventId, place, echo.get().firstVolts() > 0, byLoss, settings, end));
        double top = top(place);
        double fromTop = Math.abs(place.flaggedMetres() - top);
        if (fromTop <= place.toleranceMetres() && fromTop < AT_THE_TOP_SHARE * place.readErrorMetres()) {
            claims.add(new Claim.AtTop(eventId, place, top, settings, end));
        }
        return claims;
    }

    /** The echo of a place; none of the farther edge of a stretch that shows as one. */
    private Optional<EventEcho> echoOf(PlaceMark place) {
        return facts.stream()
                .skip(place.edge() == PlaceMark.Edge.FARTHER ? 1 : 0)
                .map(EchoFacts::echo)
                .findFirst();
    }

    /** The top of the echo, of either lobe, that lies nearest to the flag. */
    private double top(PlaceMark place) {
        double top = place.readMetres();
        double nearest = Double.POSITIVE_INFINITY;
        for (EchoFacts fact : facts) {
            for (double one :
                    new double[] {fact.echo().firstTopMetres(), fact.echo().secondTopMetres()}) {
                double apart = Math.abs(one - place.flaggedMetres());
                top = apart < nearest ? one : top;
                nearest = Math.min(nearest, apart);
            }
        }
        return top;
    }
}
