// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;

/** The files that were opened or saved last, newest first. */
public final class RecentFiles {

    private static final int MOST = 8;

    private final Optional<Preferences> store;
    private final List<Path> files = new ArrayList<>();

    private RecentFiles(Optional<Preferences> store) {
        this.store = store;
        store.ifPresent(node -> {
            for (int i = 0; i < MOST; i++) {
                read(node.get("file" + i, ""));
            }
        });
    }

    private void read(String text) {
        try {
            if (!text.isEmpty()) {
                files.add(Path.of(text));
            }
        } catch (InvalidPathException e) {
            // A name that this system can't have is no file here.
            files.remove(null);
        }
    }

    /**
     * Remembers files from one run to the next.
     *
     * @return what this user opened last
     */
    public static RecentFiles ofThisUser() {
        try {
            Preferences node = Preferences.userRoot().node("cablewright/bench");
            node.sync();
            return new RecentFiles(Optional.of(node));
        } catch (BackingStoreException | SecurityException | IllegalStateException e) {
            // A home folder that can't be written only means that nothing is remembered.
            return none();
        }
    }

    /**
     * Remembers files as long as the program runs.
     *
     * @return an empty list
     */
    public static RecentFiles none() {
        return new RecentFiles(Optional.empty());
    }

    /**
     * Lists them.
     *
     * @return newest first
     */
    public List<Path> files() {
        return List.copyOf(files);
    }

    /**
     * Puts a file first.
     *
     * @param file the file
     */
    public void add(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        files.remove(whole);
        files.add(0, whole);
        while (files.size() > MOST) {
            files.remove(files.size() - 1);
        }
        keep();
    }

    /**
     * Forgets a file that is not there any more.
     *
     * @param file the file
     */
    public void forget(Path file) {
        if (files.remove(file.toAbsolutePath().normalize())) {
            keep();
        }
    }

    private void keep() {
        store.ifPresent(node -> {
            for (int i = 0; i < MOST; i++) {
                node.put("file" + i, i < files.size() ? files.get(i).toString() : "");
            }
            try {
                node.flush();
            } catch (BackingStoreException e) {
                // Nothing is lost but the list.
                return;
            }
        });
    }
}
