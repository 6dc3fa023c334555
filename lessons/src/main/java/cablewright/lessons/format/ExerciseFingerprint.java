// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Cable;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Distinguishes exercises that have the same name: the SHA-256 of the bytes of the exercise's file. */
public final class ExerciseFingerprint {

    private ExerciseFingerprint() {}

    /**
     * Works the fingerprint of an exercise out. Any change of the exercise changes it.
     *
     * @param exercise the exercise
     * @return 64 hexadecimal digits
     */
    public static String of(Exercise exercise) {
        return of(new Document.OfExercise(exercise));
    }

    /**
     * Works the fingerprint of a cable out.
     *
     * @param cable the cable
     * @return 64 hexadecimal digits
     */
    public static String of(Cable cable) {
        return of(new Document.OfCable(cable));
    }

    private static String of(Document document) {
        byte[] bytes = new DocumentWriter().bytes(document);
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }

    /**
     * Returns whether an attempt may answer an exercise.
     *
     * @param attempt the attempt
     * @param exercise an exercise of that name
     * @return false if the attempt is bound to another exercise, or to this one before it was changed
     */
    public static boolean fits(Attempt attempt, Exercise exercise) {
        return attempt.exerciseSha256().isEmpty()
                || attempt.exerciseSha256().get().equals(of(exercise));
    }
}
