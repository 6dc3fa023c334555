// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import java.util.Optional;
import java.util.OptionalDouble;

/** One thing that a trainee can ask for. Quantities are SI. A setting without a value asks what may be set. */
sealed interface Instruction {

    /** Instructions of one word. */
    enum Plain implements Instruction {
        /** Draws the trace again. */
        TRACE,
        /** Shows the exercise again. */
        BRIEF,
        /** Lists what is set and what may be. */
        SETTINGS,
        /** Lists the kinds of event. */
        KINDS,
        /** Lists the flags. */
        LIST,
        /** Asks what the next hint costs. */
        HINT,
        /** Takes the next hint. */
        HINT_YES,
        /** Hands the flags in. */
        COMMIT,
        /** Opens the next exercise. */
        NEXT,
        /** Lists the exercises. */
        EXERCISES,
        /** Shows lengths in feet. */
        FEET,
        /** Shows lengths in metres. */
        METRES,
        /** Shows the whole range. */
        ZOOM_OUT,
        /** Shows the heights of all that comes back. */
        SCALE_AUTO,
        /** Lists what can be typed. */
        HELP,
        /** Leaves. */
        QUIT
    }

    /** Sets pulse or step. */
    record Width(boolean step, OptionalDouble seconds) implements Instruction {}

    /** Sets the velocity of propagation. */
    record Velocity(OptionalDouble fraction) implements Instruction {}

    /** Sets the range. */
    record Range(OptionalDouble metres) implements Instruction {}

    /** Sets the gain. */
    record Gain(OptionalDouble decibels) implements Instruction {}

    /** Sets how many records are averaged. */
    record Averages(OptionalDouble count) implements Instruction {}

    /** Joins the instrument to an end. */
    record TestedEnd(Optional<LineEnd> end) implements Instruction {}

    /** Reads the trace at a distance. */
    record At(double metres) implements Instruction {}

    /** Shows a part of the range. */
    record Zoom(double fromMetres, double toMetres) implements Instruction {}

    /** Shows heights up to this share of the outgoing wave. */
    record Scale(double share) implements Instruction {}

    /** Sets a flag. */
    record SetFlag(double startMetres, OptionalDouble endMetres, EventKind kind, Verdict verdict)
            implements Instruction {}

    /** Takes a flag away. */
    record Remove(String letter) implements Instruction {}

    /** Answers the question that comes before the trace; by number or by id, the reason by letter or by id. */
    record Answer(String choice, Optional<String> reason) implements Instruction {}

    /** Opens an exercise by its number, from 1. */
    record Open(int number) implements Instruction {}

    /** Writes the attempt that was handed in to a file. */
    record Save(String file) implements Instruction {}
}
