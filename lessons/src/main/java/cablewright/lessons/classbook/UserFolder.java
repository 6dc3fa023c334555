// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.classbook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where this system keeps what belongs to a user and a program. */
public final class UserFolder {

    private UserFolder() {}

    /**
     * Names the folder of this program's data; it need not exist.
     *
     * @param environment the variables of the process
     * @return the folder, beside what other programs of the system keep
     */
    public static Path data(Map<String, String> environment) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        String roaming = environment.get("APPDATA");
        String data = environment.getOrDefault("XDG_DATA_HOME", "");
        Path base;
        if (!data.isBlank()) {
            base = Path.of(data);
        } else if (system.contains("windows") && roaming != null) {
            base = Path.of(roaming);
        } else if (system.contains("mac")) {
            base = home.resolve("Library").resolve("Application Support");
        } else {
            base = home.resolve(".local").resolve("share");
        }
        return base.resolve("cablewright");
    }
}
