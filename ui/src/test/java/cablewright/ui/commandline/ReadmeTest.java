// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README tells people to save and to type works as it stands. */
class ReadmeTest {

    @TempDir
    private Path folder;

    private static String readme() throws IOException {
        return Files.readString(Path.of("..", "README.md"));
    }

    private static String block(String language) throws IOException {
        Matcher matcher = Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
                .matcher(readme().substring(readme().indexOf("## Command line")));
        assertTrue(matcher.find(), "the README has no block of " + language);
        return matcher.group(1);
    }

    @Test
    void itsCableIsSoundAndItsCommandsRun() throws IOException {
        Desk desk = new Desk(folder);
        Files.writeString(desk.file("quay-camera-3.json"), block("json"));
        List<String> commands = block("sh").lines().toList();
        assertTrue(commands.size() >= 5);
        for (String command : commands) {
            String[] words = command.split(" ");
            assertEquals("cablewright", words[0], command);
            Desk.Ran ran = desk.run(List.of(words).subList(1, words.length).toArray(new String[0]));
            assertEquals(0, ran.exit(), command + ": " + ran.err());
        }
        assertEquals(List.of("quay-camera-3.json", "quay.s2p", "trace.csv", "trace.pdf"), desk.names());
    }

    @Test
    void itNamesEveryCommand() throws IOException {
        Desk desk = new Desk(folder);
        Pattern listed = Pattern.compile("(?m)^  ([a-z]+)  ");
        String help = desk.run("--help").out();
        Matcher matcher = listed.matcher(help.substring(help.indexOf("Commands:"), help.indexOf("Conventions:")));
        while (matcher.find()) {
            assertTrue(readme().contains("| `" + matcher.group(1) + "` |"), matcher.group(1) + " is missing");
        }
    }
}
