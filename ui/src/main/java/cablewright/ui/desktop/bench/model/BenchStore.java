// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.RecoveryFolder;
import cablewright.lessons.classbook.UserFolder;
import java.util.Optional;

/**
 * What the Bench keeps beside the files that people save.
 *
 * @param recovery where work that was not saved is kept; empty where none is
 * @param recent the files that were opened last
 */
public record BenchStore(Optional<RecoveryFolder> recovery, RecentFiles recent) {

    /**
     * Keeps what belongs to this user.
     *
     * @return recovery in the user's data folder, and the list of recent files
     */
    public static BenchStore ofThisUser() {
        return new BenchStore(
                Optional.of(new RecoveryFolder(UserFolder.data(System.getenv()).resolve("recovery"))),
                RecentFiles.ofThisUser());
    }

    /**
     * Keeps nothing longer than the program runs.
     *
     * @return an empty store
     */
    public static BenchStore none() {
        return new BenchStore(Optional.empty(), RecentFiles.none());
    }
}
