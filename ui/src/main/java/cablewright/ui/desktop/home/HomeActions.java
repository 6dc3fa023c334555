// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.home;

import cablewright.lessons.practice.PracticeSession.Mode;
import java.util.Optional;

/** What the lesson home can set off; the window does it. */
public interface HomeActions {

    /**
     * Opens a lesson.
     *
     * @param entry the lesson
     * @param exerciseId the exercise to open; empty to go on where one left off
     */
    void open(HomeState.Entry entry, Optional<String> exerciseId);

    /** Starts the ten-minute round. */
    void today();

    /**
     * Starts a sitting on every kind of line.
     *
     * @param mode how
     */
    void practise(Mode mode);

    /** Asks for a file and opens it. */
    void chooseFile();

    /** Opens the Bench. */
    void bench();
}
