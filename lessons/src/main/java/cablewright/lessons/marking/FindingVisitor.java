// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

/**
 * One method for each kind of finding, so that the build breaks wherever a new one must be treated.
 *
 * @param <T> what each method returns
 */
public interface FindingVisitor<T> {

    /**
     * Visits a flag that stands for an event.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T matched(Finding.Matched finding);

    /**
     * Visits a misread place.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T wrongPlace(Finding.WrongPlace finding);

    /**
     * Visits a place that the velocity moved.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T wrongPlaceByVelocity(Finding.WrongPlaceByVelocity finding);

    /**
     * Visits a wrong kind.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T wrongKind(Finding.WrongKind finding);

    /**
     * Visits a needless dig.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T needlessDig(Finding.NeedlessDig finding);

    /**
     * Visits damage called something that belongs.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T damageLeft(Finding.DamageLeft finding);

    /**
     * Visits something found that nobody could demand.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T marginalFound(Finding.MarginalFound finding);

    /**
     * Visits a second flag at one event.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T repeated(Finding.Repeated finding);

    /**
     * Visits a flag beside an event.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T beside(Finding.Beside finding);

    /**
     * Visits a flag on the end of a branch.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T branchFlagged(Finding.BranchFlagged finding);

    /**
     * Visits a ghost taken for an event.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T ghostTakenForEvent(Finding.GhostTakenForEvent finding);

    /**
     * Visits a flag where nothing is.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T nothingThere(Finding.NothingThere finding);

    /**
     * Visits a flag on the given end.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T endFlagged(Finding.EndFlagged finding);

    /**
     * Visits a flag where two types of cable meet.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T jointFlagged(Finding.JointFlagged finding);

    /**
     * Visits a missed event.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T missed(Finding.Missed finding);

    /**
     * Visits an event that can't be seen.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T hiddenEvent(Finding.HiddenEvent finding);

    /**
     * Visits how the question was answered.
     *
     * @param finding the finding
     * @return the visitor's answer
     */
    T predictionResult(Finding.PredictionResult finding);
}
