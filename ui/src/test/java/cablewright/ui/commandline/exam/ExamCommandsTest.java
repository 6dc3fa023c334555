// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.ui.commandline.Desk;
import cablewright.ui.commandline.Samples;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An exam from the key to the class report, by the commands alone. */
class ExamCommandsTest {

    @TempDir
    private Path folder;

    private Desk desk;
    private Exercise exercise;

    @BeforeEach
    void sealAPaper() throws IOException {
        desk = new Desk(folder);
        exercise = Samples.exercise();
        desk.write("exercise.json", exercise);
        Desk.Ran made = desk.run("keys", "new", "examiner.key");
        assertEquals(0, made.exit(), made.err());
        assertTrue(made.out().startsWith("age1"), made.out());
        Desk.Ran sealed = desk.run(
                "seal",
                "exercise.json",
                "--to",
                made.out().strip(),
                "--minutes",
                "30",
                "--pass",
                "50",
                "--title",
                "Harbour exam",
                "-o",
                "paper.json");
        assertEquals(0, sealed.exit(), sealed.err());
    }

    private static String flags(Exercise of) {
        StringBuilder typed = new StringBuilder();
        for (Flag flag : KeyedAnswer.of(of).flags()) {
            String place = String.format(Locale.ROOT, "%.2f", flag.startMetres());
            String stretch = flag.endMetres().isPresent()
                    ? place + "-"
                            + String.format(
                                    Locale.ROOT, "%.2f", flag.endMetres().getAsDouble())
                    : place;
            typed.append("velocity ").append(flag.velocityFraction()).append('\n');
            typed.append("end ")
                    .append(flag.end().name().toLowerCase(Locale.ROOT))
                    .append('\n');
            flag.stimulus().ifPresent(sent -> typed.append(sent.isStep() ? "step " : "width ")
                    .append(sent.resolutionSeconds() * 1e9)
                    .append("ns\n"));
            typed.append("flag ")
                    .append(stretch)
                    .append("m ")
                    .append(flag.kind().id())
                    .append(' ');
            typed.append(flag.verdict().name().toLowerCase(Locale.ROOT)).append('\n');
        }
        return typed.toString();
    }

    private String sit(String name, String typed) {
        Desk.Ran sat = desk.typed("\n" + typed, "sit", "paper.json", "--trainee", name);
        assertEquals(0, sat.exit(), sat.err());
        return sat.out();
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void threeSittingsAreMarked() throws IOException {
        String ada = sit("Ada", flags(exercise) + "hand in\nhand in yes\n");
        sit("Bo", "flag 20 pinch damage\nquit\n");
        String bo = sit("Bo", "list\nhand in\nhand in yes\n");
        sit("Cy", "hand in\nhand in yes\n");
        Files.write(desk.file("dee.answers.age"), Arrays.copyOf(Files.readAllBytes(desk.file("cy.answers.age")), 900));
        Files.createDirectory(desk.file("answers"));
        for (String name : List.of("ada", "bo", "cy", "dee")) {
            Files.move(desk.file(name + ".answers.age"), desk.file("answers/" + name + ".answers.age"));
        }

        Desk.Ran marked = desk.run(
                "mark", "paper.json", "answers", "--key", "examiner.key", "--reports", "reports", "--format", "json");

        assertTrue(bo.contains("20.0"), bo);
        assertEquals(1, marked.exit());
        assertTrue(marked.err().contains("dee.answers.age: it was cut off"), marked.err());
        JsonNode people = new ObjectMapper().readTree(marked.out()).get("people");
        assertEquals(3, people.size());
        assertEquals("Ada", people.get(0).get("name").textValue());
        assertEquals(
                people.get(0).get("maximum").doubleValue(),
                people.get(0).get("marks").doubleValue(),
                marked.out());
        assertEquals(0, people.get(2).get("marks").doubleValue());
        assertEquals(2, people.get(1).get("runs").intValue());
        String receipt = people.get(0).get("receipt").textValue();
        assertTrue(ada.contains(receipt), ada);
        String report = text(desk.file("reports/001-ada.pdf"));
        assertTrue(report.contains(receipt), report);
        assertTrue(report.contains(exercise.title()), report);
        String certificate = text(desk.file("reports/001-ada-certificate.pdf"));
        assertTrue(certificate.contains("Ada") && certificate.contains("no licence"), certificate);
        String whole = text(desk.file("reports/class.pdf"));
        assertTrue(whole.contains("3 people were marked, 1 passed") && whole.contains("dee.answers.age"), whole);
        try (Stream<Path> files = Files.list(desk.file("reports"))) {
            assertEquals(
                    List.of(
                            "001-ada-certificate.pdf",
                            "001-ada.pdf",
                            "002-bo.pdf",
                            "003-cy.pdf",
                            "class.csv",
                            "class.json",
                            "class.pdf",
                            "xapi.json"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void nothingIsSaidAboutWhatIsRight() {
        String said = sit("Ada", flags(exercise) + "commit\nhint\nhelp\nexercises\nbrief\nquit\n");
        assertFalse(said.contains("✓") || said.contains(exercise.explanation().substring(0, 20)), said);
        assertTrue(said.contains("You pass with 50 % of the marks"), said);
        assertTrue(said.replaceAll("\\s+", " ").contains("costs 5 marks"), said);
    }

    @Test
    void aFolderWithoutAnswersIsNotMarked() throws IOException {
        Files.createDirectory(desk.file("empty"));
        Desk.Ran marked = desk.run("mark", "paper.json", "empty", "--key", "examiner.key", "--reports", "reports");
        assertEquals(1, marked.exit());
        assertTrue(marked.err().contains("no answers are here"), marked.err());
        assertFalse(Files.exists(desk.file("reports")), "nothing is written");
    }

    @Test
    void aKeyThatOthersCanReadIsRefused() throws IOException {
        sit("Ada", "hand in\nhand in yes\n");
        Files.setPosixFilePermissions(
                desk.file("examiner.key"), java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
        Desk.Ran marked = desk.run("mark", "paper.json", "ada.answers.age", "--key", "examiner.key");
        assertEquals(1, marked.exit());
        assertTrue(marked.err().contains("chmod 600"), marked.err());
    }

    @Test
    void aBackupGivesTheKeyBack() throws IOException {
        Desk.Ran backup = desk.typed("five words drawn by dice\n", "keys", "backup", "examiner.key", "backup.age");
        assertEquals(0, backup.exit(), backup.err());
        Desk.Ran wrong = desk.typed("five words drawn by dicf\n", "keys", "restore", "backup.age", "again.key");
        assertEquals(1, wrong.exit());
        Desk.Ran right = desk.typed("five words drawn by dice\n", "keys", "restore", "backup.age", "again.key");
        assertEquals(0, right.exit(), right.err());
        assertEquals(desk.run("keys", "show", "examiner.key").out(), right.out());
        assertEquals(1, desk.run("keys", "new", "examiner.key").exit());
        assertFalse(new String(Files.readAllBytes(desk.file("backup.age")), StandardCharsets.ISO_8859_1)
                .contains("AGE-SECRET"));
    }

    @Test
    void aLongPaperIsCheckedToo() throws IOException {
        byte[] paper = Files.readAllBytes(desk.file("paper.json"));
        byte[] blanks = new byte[9 * 1024 * 1024];
        Arrays.fill(blanks, (byte) ' ');
        byte[] longer = Arrays.copyOf(paper, paper.length + blanks.length);
        System.arraycopy(blanks, 0, longer, paper.length, blanks.length);
        Files.write(desk.file("long.json"), longer);
        Files.write(desk.file("blanks.json"), blanks);
        assertEquals(0, desk.run("check", "paper.json", "long.json").exit());
        Desk.Ran other = desk.run("check", "blanks.json");
        assertEquals(1, other.exit());
        assertTrue(other.err().contains("bytes") || other.out().contains("bytes"), other.err() + other.out());
    }

    @Test
    void theKeyIsWrittenOnPaperForItsOwnerAlone() throws IOException {
        Desk.Ran ran = desk.run("keys", "paper", "examiner.key", "key.pdf");
        assertEquals(0, ran.exit(), ran.err());
        String secret = Files.readAllLines(desk.file("examiner.key")).stream()
                .filter(line -> line.startsWith("AGE-SECRET"))
                .findFirst()
                .orElseThrow();
        String letters = text(desk.file("key.pdf")).replaceAll("\\s+", "");
        assertTrue(letters.contains(secret), letters);
        assertEquals(
                "rw-------",
                java.nio.file.attribute.PosixFilePermissions.toString(
                        Files.getPosixFilePermissions(desk.file("key.pdf"))));
    }
}
