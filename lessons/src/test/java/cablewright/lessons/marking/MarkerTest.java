// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.marking;

import static cablewright.lessons.exercise.Verdict.BELONGS;
import static cablewright.lessons.exercise.Verdict.DAMAGE;
import static cablewright.simulator.cable.EventKind.CABLE_CHANGE;
import static cablewright.simulator.cable.EventKind.CORRODED_JOINT;
import static cablewright.simulator.cable.EventKind.GRADUAL_DAMAGE;
import static cablewright.simulator.cable.EventKind.LOAD_COIL;
import static cablewright.simulator.cable.EventKind.OPEN;
import static cablewright.simulator.cable.EventKind.PARTIAL_OPEN;
import static cablewright.simulator.cable.EventKind.SHORT;
import static cablewright.simulator.cable.EventKind.SPLICE;
import static cablewright.simulator.cable.EventKind.WATER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.answerkey.AnswerKey;
import cablewright.lessons.answerkey.LineEvent;
import cablewright.lessons.answerkey.Requirement;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.EventRuling;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.PartMarks;
import cablewright.lessons.exercise.VelocityRule;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.TouchingConductors;
import cablewright.simulator.explanation.visibility.HiddenReason;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.paths.Reflector;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Marking case by case, on lines without loss, so that every place is known by hand: the shortest permitted pulse is 4 ns,
 * which at 85 % of light is half of 1.0193 m; the tolerance is therefore 0.5096 m up to 51 m and 1 % of the distance
 * beyond.
 */
class MarkerTest {

    private static final double HALF_PULSE = 4e-9 * 0.85 * 299_792_458 / 2;
    private static final Splice SPLICE_31 = new Splice("s31", 31, 5e-9, 0, 0.01);
    private static final CorrodedJoint JOINT_80 = new CorrodedJoint("c80", 80, 10, OptionalDouble.empty());
    private static final GradualDamage SOFT_60 = new GradualDamage("g60", 60, 8, 0.85, Profile.FLAT);

    private final Marker marker = new Marker();

    private static Flag flag(String letter, double metres, EventKind kind, Verdict verdict) {
        return new Flag(letter, LineEnd.NEAR, metres, OptionalDouble.empty(), kind, verdict, SampleExercises.VELOCITY);
    }

    private static Flag stretch(String letter, double from, double to, EventKind kind) {
        return new Flag(letter, LineEnd.NEAR, from, OptionalDouble.of(to), kind, DAMAGE, SampleExercises.VELOCITY);
    }

    private static Flag withVelocity(Flag flag, double velocity) {
        return new Flag(
                flag.letter(), flag.end(), flag.startMetres(), flag.endMetres(), flag.kind(), flag.verdict(), velocity);
    }

    private static Attempt attempt(Exercise exercise, Flag... flags) {
        return new Attempt("test", "Someone", List.of(flags), exercise.start().settings());
    }

    private MarkSheet mark(Exercise exercise, Flag... flags) {
        return marker.mark(exercise, attempt(exercise, flags));
    }

    private static <F> F only(MarkSheet sheet, Class<F> kind) {
        List<F> found = all(sheet.findings(), kind);
        assertEquals(1, found.size(), () -> kind.getSimpleName() + " in " + sheet.findings());
        return found.get(0);
    }

    private static <F> List<F> all(List<Finding> findings, Class<F> kind) {
        return findings.stream()
                .flatMap(f -> Stream.concat(Stream.of(f), f.children().stream()))
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void aPerfectReaderGetsTenForEachDemandedEvent() {
        Exercise exercise = SampleExercises.with(SPLICE_31, SOFT_60, JOINT_80);
        MarkSheet sheet = marker.mark(exercise, KeyedAnswer.of(marker.demand(exercise)));

        assertEquals(30, sheet.maximum());
        assertEquals(30, sheet.marks());
        assertEquals(1, sheet.fraction());
        assertEquals(3, all(sheet.findings(), Finding.Matched.class).size());
    }

    @Test
    void handingInNothingEarnsNothingAndCountsMissedDamage() {
        MarkSheet sheet = mark(SampleExercises.with(SPLICE_31, JOINT_80));

        assertEquals(0, sheet.marks());
        assertEquals(20, sheet.maximum());
        assertEquals(1, sheet.damageMissed());
        assertEquals(2, all(sheet.findings(), Finding.Missed.class).size());
    }

    @Test
    void theToleranceIsTheLargerOfHalfThePulseOnePerCentAndThirtyCentimetres() {
        Exercise exercise = SampleExercises.with();
        assertEquals(HALF_PULSE, MarkingRules.toleranceMetres(exercise, 0.85, 31), 1e-9);
        assertEquals(0.8, MarkingRules.toleranceMetres(exercise, 0.85, 80), 1e-12);
        assertEquals(0.3, MarkingRules.toleranceMetres(exercise, 0.05, 20), 1e-12);
    }

    @Test
    void thePlaceCountsInFullWithinOneToleranceAndFallsToNothingAtThree() {
        Exercise exercise = SampleExercises.with(SPLICE_31);

        assertEquals(
                10,
                mark(exercise, flag("A", 31 + 0.99 * HALF_PULSE, SPLICE, BELONGS))
                        .marks(),
                1e-9);
        assertEquals(
                8,
                mark(exercise, flag("A", 31 + 2 * HALF_PULSE, SPLICE, BELONGS)).marks(),
                1e-9);
        assertEquals(
                6.02,
                mark(exercise, flag("A", 31 + 2.99 * HALF_PULSE, SPLICE, BELONGS))
                        .marks(),
                1e-9);
    }

    @Test
    void aMisreadPlaceIsToldWithItsNumbers() {
        MarkSheet sheet = mark(SampleExercises.with(JOINT_80), flag("A", 81.6, CORRODED_JOINT, DAMAGE));
        Finding.WrongPlace wrong = only(sheet, Finding.WrongPlace.class);

        assertEquals(1.6, wrong.place().errorMetres(), 1e-9);
        assertEquals(80, wrong.place().trueMetres(), 1e-9);
        assertEquals(0.8, wrong.place().toleranceMetres(), 1e-9);
        assertEquals(2, wrong.place().marks(), 1e-9);
    }

    @Test
    void beyondThreeTolerancesAFlagStandsForNoEvent() {
        MarkSheet sheet = mark(SampleExercises.with(SPLICE_31), flag("A", 31 + 3.01 * HALF_PULSE, SPLICE, BELONGS));

        only(sheet, Finding.Missed.class);
        assertFalse(only(sheet, Finding.Beside.class).taken());
        assertEquals(0, sheet.marks());
        assertEquals(0, sheet.needlessDigs());
    }

    @Test
    void aKindOfTheSameSignatureEarnsTwoThirdsAndOneThatDiffersInOneMarkAThird() {
        TouchingConductors leak = new TouchingConductors("p80", 80, OptionalDouble.of(600));
        MarkSheet same = mark(SampleExercises.with(leak), flag("A", 80, EventKind.BUILD_OUT, DAMAGE));
        assertEquals(9, same.marks(), 1e-9);
        assertEquals(4, only(same, Finding.WrongKind.class).agreement());

        MarkSheet near = mark(SampleExercises.with(SPLICE_31), flag("A", 31, LOAD_COIL, BELONGS));
        assertEquals(8, near.marks(), 1e-9);
        assertEquals(3, only(near, Finding.WrongKind.class).agreement());

        MarkSheet far = mark(SampleExercises.with(SPLICE_31), flag("A", 31, SHORT, BELONGS));
        assertEquals(7, far.marks(), 1e-9);
    }

    @Test
    void damageCalledBelongingLosesItsVerdictAndIsTheFaultLeftInTheGround() {
        MarkSheet sheet = mark(SampleExercises.with(JOINT_80), flag("A", 80, CORRODED_JOINT, BELONGS));

        assertEquals(7, sheet.marks(), 1e-9);
        assertEquals(1, sheet.damageLeft());
        assertEquals(0, sheet.damageMissed());
        assertTrue(only(sheet, Finding.DamageLeft.class).event().is("c80"));
    }

    @Test
    void aDigOverHardwareLosesTheVerdictAndCostsFive() {
        MarkSheet sheet = mark(
                SampleExercises.with(SPLICE_31, JOINT_80),
                flag("A", 31, SPLICE, DAMAGE),
                flag("B", 80, CORRODED_JOINT, DAMAGE));

        assertEquals(10 + 7 - 5, sheet.marks(), 1e-9);
        assertEquals(1, sheet.needlessDigs());
        assertEquals(
                Optional.of("s31"),
                only(sheet, Finding.NeedlessDig.class).belonging().orElseThrow().eventId());
    }

    @Test
    void aDigOverNothingCostsFiveAndAnyOtherClaimAboutNothingThree() {
        Exercise exercise = SampleExercises.with(SPLICE_31);

        MarkSheet dig = mark(exercise, flag("A", 31, SPLICE, BELONGS), flag("B", 50, WATER, DAMAGE));
        assertEquals(5, dig.marks(), 1e-9);
        assertEquals(Optional.empty(), only(dig, Finding.NeedlessDig.class).belonging());

        assertEquals(
                7,
                mark(exercise, flag("A", 31, SPLICE, BELONGS), flag("B", 50, SPLICE, BELONGS))
                        .marks(),
                1e-9);
    }

    @Test
    void theTotalIsNeverBelowZero() {
        MarkSheet sheet = mark(
                SampleExercises.with(SPLICE_31),
                flag("A", 45, WATER, DAMAGE),
                flag("B", 55, WATER, DAMAGE),
                flag("C", 65, WATER, DAMAGE));

        assertEquals(0, sheet.marks());
        assertEquals(3, sheet.needlessDigs());
    }

    /** Two-tier items: half for the answer, the whole with its reason, nothing for a reason without the answer. */
    @Test
    void aReasonMakesTheOtherHalfOfAPredictionsMarks() {
        List<Choice> choices = List.of(new Choice("yes", "Yes", "Right."), new Choice("no", "No", "Wrong."));
        Prediction asked =
                new Prediction("Does it?", choices, "yes", Optional.of(new Reasons(choices, "no")), "It does.");
        Exercise exercise = ExerciseEdits.withPrediction(SampleExercises.with(SPLICE_31), Optional.of(asked));
        assertEquals(10, predicted(exercise, "yes", Optional.of("no")), 1e-12);
        assertEquals(5, predicted(exercise, "yes", Optional.of("yes")), 1e-12);
        assertEquals(5, predicted(exercise, "yes", Optional.empty()), 1e-12);
        assertEquals(0, predicted(exercise, "no", Optional.of("no")), 1e-12);
    }

    private double predicted(Exercise exercise, String choice, Optional<String> reason) {
        Attempt attempt = new Attempt(
                "test",
                "Someone",
                List.of(),
                exercise.start().settings(),
                0,
                Optional.of(choice),
                reason,
                Optional.empty(),
                Optional.empty());
        return marker.mark(exercise, attempt).marks();
    }

    @Test
    void hintsCostWhatTheySay() {
        Exercise exercise = SampleExercises.with(SPLICE_31);
        Attempt attempt = new Attempt(
                "test",
                "Someone",
                List.of(flag("A", 31, SPLICE, BELONGS)),
                exercise.start().settings(),
                2,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        MarkSheet sheet = marker.mark(exercise, attempt);

        assertEquals(5, sheet.hintCostMarks());
        assertEquals(5, sheet.marks(), 1e-9);
    }

    @Test
    void aVelocityOtherThanTheStatedOneLosesThePlaceButIsToldApartFromMisreading() {
        VelocityRule stated = new VelocityRule(0.6, 1, OptionalDouble.of(0.85));
        Exercise exercise = SampleExercises.with(stated, false, JOINT_80);
        double shown = 80 * 0.83 / 0.85;
        MarkSheet sheet = mark(exercise, withVelocity(flag("A", shown, CORRODED_JOINT, DAMAGE), 0.83));
        Finding.WrongPlaceByVelocity finding = only(sheet, Finding.WrongPlaceByVelocity.class);

        assertTrue(finding.stated());
        assertEquals(0.83, finding.setFraction());
        assertEquals(0.85, finding.rightFraction());
        assertEquals(shown - 80, finding.place().digErrorMetres(), 1e-9);
        assertEquals(8, sheet.marks(), 1e-9, "the right edge earns half of the place's marks");
    }

    @Test
    void whereTheVelocityMustBeFoundTrueMetresEarnAllAndTheRightEdgeHalf() {
        VelocityRule open = new VelocityRule(0.6, 1, OptionalDouble.empty());
        Exercise exercise = SampleExercises.with(open, false, JOINT_80);
        MarkSheet sheet = mark(exercise, withVelocity(flag("A", 80 * 0.7 / 0.85, CORRODED_JOINT, DAMAGE), 0.7));
        Finding.WrongPlaceByVelocity finding = only(sheet, Finding.WrongPlaceByVelocity.class);

        assertEquals(8, sheet.marks(), 1e-9);
        assertFalse(finding.stated());
        assertEquals(0.85, finding.rightFraction(), 1e-3);
        assertEquals(80 * 0.7 / 0.85 - 80, finding.place().digErrorMetres(), 1e-9);
        assertEquals(
                10,
                mark(exercise, withVelocity(flag("A", 80, CORRODED_JOINT, DAMAGE), 0.85))
                        .marks(),
                1e-9);
    }

    @Test
    void aStretchIsTwoPlacesEachWorthHalf() {
        Exercise exercise = SampleExercises.with(SOFT_60);

        assertEquals(10, mark(exercise, stretch("A", 60, 68, GRADUAL_DAMAGE)).marks(), 1e-9);
        assertEquals(8, mark(exercise, stretch("A", 60, 75, GRADUAL_DAMAGE)).marks(), 1e-9);
        assertEquals(8, mark(exercise, flag("A", 60, GRADUAL_DAMAGE, DAMAGE)).marks(), 1e-9);
        assertEquals(8, mark(exercise, flag("A", 68, GRADUAL_DAMAGE, DAMAGE)).marks(), 1e-9);
        assertEquals(6, mark(exercise, flag("A", 64, GRADUAL_DAMAGE, DAMAGE)).marks(), 1e-9);
        assertEquals(0, mark(exercise, stretch("A", 0, 100, GRADUAL_DAMAGE)).marks(), 1e-9);
    }

    @Test
    void oneFlagAtEachEdgeIsAsGoodAsOneFlagOverTheStretch() {
        MarkSheet sheet = mark(
                SampleExercises.with(SOFT_60),
                flag("A", 60, GRADUAL_DAMAGE, DAMAGE),
                flag("B", 68, GRADUAL_DAMAGE, DAMAGE));
        Finding.Matched matched = only(sheet, Finding.Matched.class);

        assertEquals(10, sheet.marks(), 1e-9);
        assertEquals(2, matched.places().size());
        assertEquals(1, matched.alsoFlags().size());
        assertTrue(all(sheet.findings(), Finding.Repeated.class).isEmpty());
    }

    @Test
    void damageWithoutEdgesIsRightAnywhereWithin() {
        Exercise exercise = SampleExercises.with(new GradualDamage("soft", 50, 6, 0.8, Profile.RAISED_COSINE));

        assertEquals(10, mark(exercise, flag("A", 51, GRADUAL_DAMAGE, DAMAGE)).marks(), 1e-9);
        assertEquals(10, mark(exercise, stretch("A", 50, 56, GRADUAL_DAMAGE)).marks(), 1e-9);
        assertEquals(
                8,
                mark(exercise, flag("A", 56 + 2 * HALF_PULSE, GRADUAL_DAMAGE, DAMAGE))
                        .marks(),
                0.2,
                "the edge of so soft a stretch reads within a few centimetres of it");
    }

    @Test
    void aFlagOnTheGivenEndIsPassedOverKindly() {
        MarkSheet sheet =
                mark(SampleExercises.with(SPLICE_31), flag("A", 31, SPLICE, BELONGS), flag("B", 100, OPEN, DAMAGE));

        assertEquals(10, sheet.marks(), 1e-9);
        assertEquals(0, sheet.needlessDigs());
        assertEquals(100, only(sheet, Finding.EndFlagged.class).shownMetres(), 1e-9);
    }

    @Test
    void anEndThatIsAskedForIsAnEventLikeOthers() {
        Exercise given = SampleExercises.with(SPLICE_31);
        Exercise asked = SampleExercises.of(given.cable(), given.permitted().velocity(), given.record(), false);

        MarkSheet right = mark(asked, flag("A", 31, SPLICE, BELONGS), flag("B", 100, EventKind.END, BELONGS));
        assertEquals(20, right.maximum());
        assertEquals(20, right.marks(), 1e-9);
        assertEquals(
                20,
                mark(asked, flag("A", 31, SPLICE, BELONGS), flag("B", 100, OPEN, BELONGS))
                        .marks(),
                1e-9);
        assertEquals(10, mark(asked, flag("A", 31, SPLICE, BELONGS)).marks(), 1e-9);
        assertEquals(
                Optional.empty(),
                only(mark(asked, flag("A", 31, SPLICE, BELONGS)), Finding.Missed.class)
                        .event()
                        .eventId());
    }

    @Test
    void whatNoPermittedSettingShowsIsNotDemandedAndToldWithItsReason() {
        MarkSheet sheet = mark(SampleExercises.with(new Splice("tiny", 45, 1e-12, 0, 0)));
        LineEvent hidden = only(sheet, Finding.HiddenEvent.class).event();

        assertEquals(0, sheet.maximum());
        assertEquals(1, sheet.fraction());
        assertEquals(Requirement.HIDDEN, hidden.standing());
        assertEquals(Optional.of(HiddenReason.BELOW_NOISE), hidden.best().reason());
    }

    @Test
    void whatLiesBeyondAFullOpenIsReadFromTheOtherEnd() {
        Exercise exercise =
                SampleExercises.with(SPLICE_31, new BrokenConductor("break", 50, OptionalDouble.empty()), JOINT_80);
        AnswerKey demand = marker.demand(exercise);

        assertEquals(3, demand.demanded().size());
        LineEvent joint = demand.events().get(2);
        assertEquals(LineEnd.FAR, joint.best().end());
        Flag fromFar = new Flag("A", LineEnd.FAR, 20, OptionalDouble.empty(), CORRODED_JOINT, DAMAGE, 0.85);
        assertEquals(10, mark(exercise, fromFar).marks(), 1e-9);
    }

    @Test
    void aLuckyGuessAtWhatNobodySeesEarnsNothingAndCostsNothing() {
        Exercise exercise =
                SampleExercises.with(SPLICE_31, new CorrodedJoint("tiny", 70, 1e-4, OptionalDouble.empty()));
        MarkSheet sheet = mark(exercise, flag("A", 70, CORRODED_JOINT, DAMAGE));

        assertEquals(0, sheet.marks());
        assertEquals(0, sheet.needlessDigs());
        assertEquals(0, only(sheet, Finding.Matched.class).marks());
    }

    @Test
    void aGuessAtSomethingElseWhereNobodySeesAnythingCosts() {
        CorrodedJoint hidden = new CorrodedJoint("tiny", 70, 1e-4, OptionalDouble.empty());
        MarkSheet sheet = mark(SampleExercises.with(SPLICE_31, hidden), flag("A", 70, WATER, DAMAGE));

        assertEquals(0, sheet.needlessDigs());
        assertEquals(-3, only(sheet, Finding.Beside.class).marks(), "nobody can have seen it, so it is a guess");
    }

    @Test
    void whatIsMarginalEarnsMarksWhenFoundAndCostsNothingWhenMissed() {
        Exercise exercise =
                SampleExercises.with(SPLICE_31, new CorrodedJoint("faint", 70, 0.65, OptionalDouble.empty()));
        assertEquals(
                Requirement.MARGINAL, marker.demand(exercise).events().get(1).standing());

        MarkSheet missed = mark(exercise, flag("A", 31, SPLICE, BELONGS));
        assertEquals(10, missed.marks(), 1e-9);
        assertEquals(10, missed.maximum());
        assertEquals(0, missed.damageMissed());

        MarkSheet found = mark(exercise, flag("A", 31, SHORT, BELONGS), flag("B", 70, CORRODED_JOINT, DAMAGE));
        only(found, Finding.MarginalFound.class);
        assertEquals(10, found.marks(), "seven and ten, but never more than there is to earn");
    }

    /** Out to the end, back to the shunt, out to the joint and home: 100 + 60 − 40 m. */
    @Test
    void aGhostTakenForAnEventIsToldWithItsPath() {
        CorrodedJoint joint = new CorrodedJoint("c60", 60, 10, OptionalDouble.empty());
        Exercise exercise = SampleExercises.with(new ShuntPart("tee", 40, Lumped.resistor(75)), joint);
        MarkSheet sheet = mark(exercise, flag("A", 120, OPEN, DAMAGE));
        Finding.GhostTakenForEvent ghost = only(sheet, Finding.GhostTakenForEvent.class);

        // The wave takes the way in either order; both come back together.
        assertEquals(
                Set.of(new Reflector.EndOfLine(), Reflector.event("tee"), Reflector.event("c60")),
                Set.copyOf(ghost.path()));
        assertEquals(Reflector.event("tee"), ghost.path().get(1));
        assertEquals(120, ghost.shownMetres(), 1e-9);
        assertEquals(1, sheet.needlessDigs());
        only(mark(exercise, flag("A", 110, OPEN, BELONGS)), Finding.NothingThere.class);
    }

    /** A series resistance is a series resistance, whatever made it. */
    @Test
    void theSamePhysicsEarnsTheSame() {
        BrokenConductor partial = new BrokenConductor("p80", 80, OptionalDouble.of(10));
        assertEquals(
                10,
                mark(SampleExercises.with(JOINT_80), flag("A", 80, PARTIAL_OPEN, DAMAGE))
                        .marks(),
                1e-9);
        assertEquals(
                10,
                mark(SampleExercises.with(partial), flag("A", 80, CORRODED_JOINT, DAMAGE))
                        .marks(),
                1e-9);
    }

    @Test
    void aStretchFlaggedGenerouslyLosesItsEdgesAndIsNoDigOverNothing() {
        MarkSheet generous = mark(SampleExercises.with(SOFT_60), stretch("A", 50, 78, GRADUAL_DAMAGE));
        assertEquals(6, generous.marks(), 1e-9);
        assertEquals(0, generous.needlessDigs());

        MarkSheet everywhere = mark(SampleExercises.with(SPLICE_31), stretch("A", 10, 90, WATER));
        assertEquals(0, everywhere.needlessDigs());
        assertTrue(all(everywhere.findings(), Finding.NothingThere.class).isEmpty());
    }

    @Test
    void aBadContactMakesHardwareDamage() {
        Connector bad = new Connector("k40", 40, 75, 0.03, 60);
        Connector good = new Connector("k40", 40, 60, 0.05, 0.01);
        assertEquals(
                Verdict.DAMAGE,
                marker.demand(SampleExercises.with(bad)).events().get(0).truth());
        assertEquals(
                BELONGS,
                marker.demand(SampleExercises.with(good)).events().get(0).truth());
    }

    @Test
    void theInstructorDecidesVerdictToleranceKindsAndMarks() {
        EventRuling ruling = new EventRuling(
                "s31",
                Optional.of(DAMAGE),
                OptionalDouble.of(3),
                List.of(CORRODED_JOINT),
                Optional.of(new PartMarks(8, 1, 6)));
        Exercise exercise = ExerciseEdits.withRuling(SampleExercises.with(SPLICE_31), ruling);
        MarkSheet sheet = mark(exercise, flag("A", 33.9, CORRODED_JOINT, DAMAGE));

        assertEquals(15, sheet.maximum(), 1e-9);
        assertEquals(15, sheet.marks(), 1e-9);
        assertEquals(9, mark(exercise, flag("A", 31, SPLICE, BELONGS)).marks(), 1e-9, "all but the verdict");
    }

    @Test
    void aSecondFlagAtAnEventAddsNothingAndAContradictionCountsByItsWorse() {
        Exercise exercise = SampleExercises.with(JOINT_80);

        MarkSheet twice =
                mark(exercise, flag("A", 80, CORRODED_JOINT, DAMAGE), flag("B", 80.1, CORRODED_JOINT, DAMAGE));
        assertEquals(10, twice.marks(), 1e-9);
        only(twice, Finding.Repeated.class);

        MarkSheet spray = mark(
                exercise,
                flag("A", 80, CORRODED_JOINT, DAMAGE),
                flag("B", 80, WATER, DAMAGE),
                flag("C", 80, SPLICE, BELONGS));
        assertEquals(4, spray.marks(), 1e-9);
    }

    @Test
    void placesAreCountedFromTheEndThatWasTested() {
        Exercise exercise = SampleExercises.with(SPLICE_31);
        Flag fromFar = new Flag("A", LineEnd.FAR, 69, OptionalDouble.empty(), SPLICE, BELONGS, 0.85);

        assertEquals(10, mark(exercise, fromFar).marks(), 1e-9);
        Flag wrongEnd = new Flag("A", LineEnd.FAR, 31, OptionalDouble.empty(), SPLICE, BELONGS, 0.85);
        assertEquals(0, mark(exercise, wrongEnd).marks(), 1e-9);
    }

    @Test
    void hardwareThatAnHonestRecordLacksIsDamageAndOneThatMayLieExcusesIt() {
        Exercise honest = SampleExercises.with(SPLICE_31);
        AsBuiltRecord bare = new AsBuiltRecord(
                honest.record().lengthMetres(), List.of(), honest.record().farEnd(), "invented", false);
        Exercise unrecorded =
                SampleExercises.of(honest.cable(), honest.permitted().velocity(), bare, true);
        assertEquals(10, mark(unrecorded, flag("A", 31, SPLICE, DAMAGE)).marks(), 1e-9);
        assertEquals(1, mark(unrecorded, flag("A", 31, SPLICE, BELONGS)).damageLeft());

        Exercise doubtful = SampleExercises.with(VelocityRule.fixed(0.85), true, SPLICE_31);
        assertEquals(10, mark(doubtful, flag("A", 31, SPLICE, BELONGS)).marks(), 1e-9);
    }

    @Test
    void whereTwoTypesMeetAFlagIsNotedAndOnlyADigCosts() {
        Cable cable = new Cable(
                "two types",
                List.of(
                        new Run(Catalogue.standard().type("lossless-75"), 60),
                        new Run(Catalogue.standard().type("drop-11-foam"), 40)),
                List.of(SPLICE_31),
                new FarEnd.Open());
        Exercise exercise = SampleExercises.of(
                cable, VelocityRule.fixed(0.85), SampleExercises.with(SPLICE_31).record(), true);
        Flag splice = flag("A", 31, SPLICE, BELONGS);

        MarkSheet noted = mark(exercise, splice, flag("B", 60, CABLE_CHANGE, BELONGS));
        assertEquals(10, noted.marks(), 1e-9);
        assertEquals(60, only(noted, Finding.JointFlagged.class).shownMetres(), 1e-9);
        assertEquals(
                5, mark(exercise, splice, flag("B", 60, CABLE_CHANGE, DAMAGE)).marks(), 1e-9);
    }

    @Test
    void aFlagOnTheEndOfABranchIsToldWhatItIs() {
        Cable branch = new Cable(
                "branch", List.of(new Run(Catalogue.standard().type("lossless-75"), 12)), List.of(), new FarEnd.Open());
        Exercise exercise = SampleExercises.with(new BridgedTap("tap", 40, branch));
        MarkSheet sheet = mark(exercise, flag("A", 40, EventKind.BRIDGED_TAP, BELONGS), flag("B", 52, OPEN, DAMAGE));

        assertEquals("tap", only(sheet, Finding.BranchFlagged.class).tapId());
        assertEquals(12, only(sheet, Finding.BranchFlagged.class).alongMetres(), 1e-9);
        assertEquals(5, sheet.marks(), 1e-9);
    }

    @Test
    void ofTwoFlagsAndTwoEventsEachGetsTheOneThatGivesTheMost() {
        Splice near = new Splice("near", 50, 5e-9, 0, 0.01);
        CorrodedJoint far = new CorrodedJoint("far", 51.5, 10, OptionalDouble.empty());
        MarkSheet sheet = mark(
                SampleExercises.with(near, far),
                flag("A", 51.2, CORRODED_JOINT, DAMAGE),
                flag("B", 50.6, SPLICE, BELONGS));
        List<Finding.Matched> matched = all(sheet.findings(), Finding.Matched.class);

        assertEquals("B", matched.get(0).flag().letter());
        assertTrue(matched.get(0).event().is("near"));
        assertEquals("A", matched.get(1).flag().letter());
    }

    @Test
    void anAttemptForAnotherExerciseIsRefused() {
        Exercise exercise = SampleExercises.with();
        Attempt other =
                new Attempt("other", "Someone", List.of(), exercise.start().settings());

        assertThrows(IllegalArgumentException.class, () -> marker.mark(exercise, other));
    }

    @Test
    void theRulesOfAssignmentFindTheBestOfAllWays() {
        double no = Double.NaN;
        double[][] worth = {{10, 9, no}, {9, 1, no}, {no, no, 3}};
        int[] chosen = Assignment.best(worth, new double[] {0, 0, 4});

        assertEquals("[1, 0, -1]", Arrays.toString(chosen));
        assertEquals(0, Assignment.best(new double[0][0], new double[0]).length);
    }
}
