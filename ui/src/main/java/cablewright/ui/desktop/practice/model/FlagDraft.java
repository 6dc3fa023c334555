// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.draft.FlagSketch;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Nature;
import cablewright.simulator.wave.Stimulus;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A flag that is being set: like {@link Flag}, but what it is may not be said yet. It stays at its time on the trace: when
 * the velocity is changed, its metres change with the axis.
 *
 * @param letter its letter
 * @param end the end from which it was read
 * @param startMetres its place at {@code velocityFraction} [m]
 * @param endMetres other place of a stretch [m], on either side of the first; absent for one place
 * @param kind what is there; absent until said
 * @param verdict whether it belongs; absent until said
 * @param velocityFraction velocity factor used to convert time to distance, over that of light
 * @param stimulus outgoing wave with which the place was read last
 */
public record FlagDraft(
        String letter,
        LineEnd end,
        double startMetres,
        OptionalDouble endMetres,
        Optional<EventKind> kind,
        Optional<Verdict> verdict,
        double velocityFraction,
        Stimulus stimulus) {

    static FlagDraft at(String letter, LineEnd end, double metres, double velocityFraction, Stimulus stimulus) {
        return new FlagDraft(
                letter,
                end,
                metres,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                velocityFraction,
                stimulus);
    }

    static FlagDraft of(Flag flag, Stimulus usual) {
        return new FlagDraft(
                flag.letter(),
                flag.end(),
                flag.startMetres(),
                flag.endMetres(),
                Optional.of(flag.kind()),
                Optional.of(flag.verdict()),
                flag.velocityFraction(),
                flag.stimulus().orElse(usual));
    }

    static FlagDraft of(FlagSketch sketch) {
        return new FlagDraft(
                sketch.letter(),
                sketch.end(),
                sketch.startMetres(),
                sketch.otherMetres(),
                sketch.kind(),
                sketch.verdict(),
                sketch.velocityFraction(),
                sketch.stimulus());
    }

    /** The flag as it is kept until it is handed in. */
    FlagSketch toSketch() {
        return new FlagSketch(letter, end, startMetres, endMetres, kind, verdict, velocityFraction, stimulus);
    }

    FlagDraft movedTo(double metres) {
        return new FlagDraft(letter, end, metres, endMetres, kind, verdict, velocityFraction, stimulus);
    }

    FlagDraft endingAt(OptionalDouble metres) {
        return new FlagDraft(letter, end, startMetres, metres, kind, verdict, velocityFraction, stimulus);
    }

    /** Says the kind; the verdict follows the kind's nature where none was said. */
    FlagDraft of(EventKind said) {
        Verdict usual = said.nature() == Nature.HARDWARE ? Verdict.BELONGS : Verdict.DAMAGE;
        boolean followed = verdict.isEmpty()
                || kind.isPresent()
                        && verdict.get() == (kind.get().nature() == Nature.HARDWARE ? Verdict.BELONGS : Verdict.DAMAGE);
        return new FlagDraft(
                letter,
                end,
                startMetres,
                endMetres,
                Optional.of(said),
                followed ? Optional.of(usual) : verdict,
                velocityFraction,
                stimulus);
    }

    FlagDraft judged(Verdict said) {
        return new FlagDraft(letter, end, startMetres, endMetres, kind, Optional.of(said), velocityFraction, stimulus);
    }

    /** Returns the same times at another velocity. */
    FlagDraft toldAt(double otherVelocity) {
        double ratio = otherVelocity / velocityFraction;
        OptionalDouble stop = endMetres.isPresent() ? OptionalDouble.of(endMetres.getAsDouble() * ratio) : endMetres;
        return new FlagDraft(letter, end, startMetres * ratio, stop, kind, verdict, otherVelocity, stimulus);
    }

    FlagDraft readWith(Stimulus other) {
        return new FlagDraft(letter, end, startMetres, endMetres, kind, verdict, velocityFraction, other);
    }

    boolean isComplete() {
        return kind.isPresent() && verdict.isPresent();
    }

    /** The flag to hand in: a stretch in order, nothing before the port. */
    Flag toFlag() {
        double other = endMetres.orElse(startMetres);
        double near = Math.max(0, Math.min(startMetres, other));
        OptionalDouble far = endMetres.isPresent()
                ? OptionalDouble.of(Math.max(near, Math.max(startMetres, other)))
                : OptionalDouble.empty();
        return new Flag(
                letter,
                end,
                near,
                far,
                kind.orElseThrow(),
                verdict.orElseThrow(),
                velocityFraction,
                Optional.of(stimulus));
    }
}
