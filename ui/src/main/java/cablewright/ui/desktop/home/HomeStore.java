// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.home;

import cablewright.lessons.classbook.UserFolder;
import cablewright.lessons.work.WorkFolder;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Where the lesson home finds what is kept.
 *
 * @param work unfinished work
 * @param lessons the folder of one's own lessons; empty where there is none
 */
public record HomeStore(WorkFolder work, Optional<Path> lessons) {

    /**
     * Keeps work only as long as the program runs.
     *
     * @return a store without folders
     */
    public static HomeStore inMemory() {
        return new HomeStore(WorkFolder.inMemory(), Optional.empty());
    }

    /**
     * Returns the store of this user.
     *
     * @param environment the environment variables
     * @return the folders in the user's data folder
     */
    public static HomeStore ofThisUser(Map<String, String> environment) {
        return new HomeStore(
                WorkFolder.ofThisUser(environment),
                Optional.of(UserFolder.data(environment).resolve("lessons")));
    }
}
