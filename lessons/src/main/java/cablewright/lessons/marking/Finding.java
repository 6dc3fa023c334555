// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.exercise.Flag;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.paths.Reflector;
import java.util.List;
import java.util.Optional;

/** One thing that marking found, with its numbers. Findings form a tree: remarks on a flag stand under it. */
public sealed interface Finding {

    /**
     * Returns what this finding itself adds to or takes from the marks; what stands under it is counted apart.
     *
     * @return marks, negative where it costs
     */
    double marks();

    /**
     * Returns the remarks under this finding.
     *
     * @return findings, perhaps none
     */
    default List<Finding> children() {
        return List.of();
    }

    /**
     * Calls the visitor's method for this kind of finding.
     *
     * @param visitor what to call
     * @param <T> what the visitor returns
     * @return what it returned
     */
    <T> T accept(FindingVisitor<T> visitor);

    /**
     * A flag stands for an event.
     *
     * @param flag the flag
     * @param alsoFlags further flags at the same event, such as one at the other edge of a stretch
     * @param event the event
     * @param places how near its places are
     * @param kindMarks marks for the kind
     * @param verdictMarks marks for the verdict
     * @param marks marks for all of it; 0 where the event can't be asked for
     * @param children remarks: wrong place, wrong kind, needless dig, damage left
     */
    record Matched(
            Flag flag,
            List<Flag> alsoFlags,
            LineEvent event,
            List<PlaceMark> places,
            double kindMarks,
            double verdictMarks,
            double marks,
            List<Finding> children)
            implements Finding {
        /** Copies the lists. */
        public Matched {
            alsoFlags = List.copyOf(alsoFlags);
            places = List.copyOf(places);
            children = List.copyOf(children);
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.matched(this);
        }
    }

    /**
     * A place was misread by more than the tolerance.
     *
     * @param place the place
     */
    record WrongPlace(PlaceMark place) implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.wrongPlace(this);
        }
    }

    /**
     * A place was read well, but the velocity that was set puts it elsewhere.
     *
     * @param place the place
     * @param setFraction velocity that was set, over that of light
     * @param rightFraction velocity that the brief states, or else the one at which the trace would have shown the true
     *     place
     * @param stated whether the brief states it
     */
    record WrongPlaceByVelocity(PlaceMark place, double setFraction, double rightFraction, boolean stated)
            implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.wrongPlaceByVelocity(this);
        }
    }

    /**
     * An event was taken for another kind.
     *
     * @param flagged the kind that was flagged
     * @param truth the kind that it is
     * @param agreement marks of the signature in which the two agree, 0 to 4
     */
    record WrongKind(EventKind flagged, EventKind truth, int agreement) implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.wrongKind(this);
        }
    }

    /**
     * A flag would open the ground for nothing: over something that belongs, or where nothing is.
     *
     * @param flag the flag
     * @param belonging the event that belongs there; empty where nothing is
     * @param marks what it costs, negative
     */
    record NeedlessDig(Flag flag, Optional<LineEvent> belonging, double marks) implements Finding {
        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.needlessDig(this);
        }
    }

    /**
     * Damage was called something that belongs: the fault stays in the ground.
     *
     * @param flag the flag
     * @param event the damage
     */
    record DamageLeft(Flag flag, LineEvent event) implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.damageLeft(this);
        }
    }

    /**
     * Something was found that nobody could demand.
     *
     * @param event the event
     */
    record MarginalFound(LineEvent event) implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.marginalFound(this);
        }
    }

    /**
     * A flag at an event that another flag already stands for.
     *
     * @param flag the flag
     * @param event the event
     * @param children a needless dig, if it is one
     */
    record Repeated(Flag flag, LineEvent event, List<Finding> children) implements Finding {
        /** Copies the list. */
        public Repeated {
            children = List.copyOf(children);
        }

        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.repeated(this);
        }
    }

    /**
     * A flag that lies on an event or on its echo, or beside it, and does not stand for it: its places are too far off, or
     * another flag stands for the event already, or nobody could see it.
     *
     * @param flag the flag
     * @param event the event
     * @param taken whether another flag stands for the event
     * @param marks what it costs where it says that something more is there: negative or 0
     * @param children a needless dig, if it is one
     */
    record Beside(Flag flag, LineEvent event, boolean taken, double marks, List<Finding> children) implements Finding {
        /** Copies the list. */
        public Beside {
            children = List.copyOf(children);
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.beside(this);
        }
    }

    /**
     * A flag where the end of a branch shows: it lies in the branch, not on the line.
     *
     * @param flag the flag
     * @param tapId the event by which the branch leaves
     * @param alongMetres how far along the branch its end lies [m]
     * @param shownMetres where the trace shows it at the velocity that was set [m]
     * @param heightVolts its largest value, with its sign, for an outgoing wave of 1 V [V]
     * @param children a needless dig, if it is one
     */
    record BranchFlagged(
            Flag flag, String tapId, double alongMetres, double shownMetres, double heightVolts, List<Finding> children)
            implements Finding {
        /** Copies the list. */
        public BranchFlagged {
            children = List.copyOf(children);
        }

        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.branchFlagged(this);
        }
    }

    /**
     * A flag where only a re-reflection shows.
     *
     * @param flag the flag
     * @param path what the wave met, in order, such as pinch, port, pinch
     * @param shownMetres where the re-reflection shows at the velocity that was set [m]
     * @param heightVolts its largest value, with its sign, for an outgoing wave of 1 V [V]
     * @param marks what it costs, negative; 0 where it is a needless dig, which costs by itself
     * @param children a needless dig, if it is one
     */
    record GhostTakenForEvent(
            Flag flag,
            List<Reflector> path,
            double shownMetres,
            double heightVolts,
            double marks,
            List<Finding> children)
            implements Finding {
        /** Copies the lists. */
        public GhostTakenForEvent {
            path = List.copyOf(path);
            children = List.copyOf(children);
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.ghostTakenForEvent(this);
        }
    }

    /**
     * A flag where nothing is.
     *
     * @param flag the flag
     * @param marks what it costs, negative; 0 where it is a needless dig, which costs by itself
     * @param children a needless dig, if it is one
     */
    record NothingThere(Flag flag, double marks, List<Finding> children) implements Finding {
        /** Copies the list. */
        public NothingThere {
            children = List.copyOf(children);
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.nothingThere(this);
        }
    }

    /**
     * A flag on the end of the line, which is given: no marks, no cost.
     *
     * @param flag the flag
     * @param shownMetres where the end shows at the velocity that was set [m]
     */
    record EndFlagged(Flag flag, double shownMetres) implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.endFlagged(this);
        }
    }

    /**
     * A flag where two runs of cable of different types meet: no marks, and no cost unless it is to be dug up.
     *
     * @param flag the flag
     * @param shownMetres where they meet at the velocity that was set [m]
     * @param children a needless dig, if it is one
     */
    record JointFlagged(Flag flag, double shownMetres, List<Finding> children) implements Finding {
        /** Copies the list. */
        public JointFlagged {
            children = List.copyOf(children);
        }

        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.jointFlagged(this);
        }
    }

    /**
     * An event that no flag stands for and that could be seen.
     *
     * @param event the event; where it is {@link Requirement#MARGINAL} nothing was lost
     */
    record Missed(LineEvent event) implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.missed(this);
        }
    }

    /**
     * An event that the permitted settings can't show. {@link LineEvent#best} has the reason.
     *
     * @param event the event
     */
    record HiddenEvent(LineEvent event) implements Finding {
        @Override
        public double marks() {
            return 0;
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.hiddenEvent(this);
        }
    }

    /**
     * How the question before the trace was answered.
     *
     * @param chosenId the answer chosen; empty where none was
     * @param correctId the right answer
     * @param chosenReasonId the reason chosen with it; empty where none was
     * @param correctReasonId the right reason; empty where none was asked for
     * @param marks marks earned
     */
    record PredictionResult(
            Optional<String> chosenId,
            String correctId,
            Optional<String> chosenReasonId,
            Optional<String> correctReasonId,
            double marks)
            implements Finding {

        /**
         * Returns whether the answer was right.
         *
         * @return whether the right one was chosen
         */
        public boolean isRight() {
            return chosenId.filter(correctId::equals).isPresent();
        }

        /**
         * Returns whether the reason was right too.
         *
         * @return whether the right one was chosen, or none was asked for
         */
        public boolean isReasonRight() {
            return correctReasonId.isEmpty() || chosenReasonId.equals(correctReasonId);
        }

        @Override
        public <T> T accept(FindingVisitor<T> visitor) {
            return visitor.predictionResult(this);
        }
    }
}
