// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.classbook.XapiStatements;
import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.result.AnswerFile;
import cablewright.lessons.exam.result.ClassMarking;
import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.result.ClassTable;
import cablewright.lessons.exam.result.PersonResult;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.KeyFile;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.file.FileFault;
import cablewright.lessons.format.LessonFormatException;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.print.ClassReportPaper;
import cablewright.ui.print.PaperSize;
import cablewright.ui.print.PersonReport;
import cablewright.ui.words.FindingWords;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Marks the sealed answers of a class from the command line. */
final class ClassMarker {

    private static final int MOST_ANSWER_BYTES = 16 * 1024 * 1024;

    private final RootCommand root;
    private final PaperFile paper;
    private final Path keyFile;
    private final Optional<Instant> due;

    ClassMarker(RootCommand root, PaperFile paper, Path keyFile, Optional<Instant> due) {
        this.root = root;
        this.paper = paper;
        this.keyFile = keyFile;
        this.due = due;
    }

    ClassResult mark(List<Path> files) {
        try {
            ExaminerKey key = KeyFile.read(keyFile);
            List<AnswerFile> answers = new ArrayList<>();
            for (Path file : files) {
                try (InputStream in = Files.newInputStream(file)) {
                    answers.add(new AnswerFile(file.getFileName().toString(), in.readNBytes(MOST_ANSWER_BYTES)));
                }
            }
            return new ClassMarking(paper, key, due)
                    .mark(answers, (done, all) -> root.remark("marked " + done + " of " + all), () -> false);
        } catch (SealException e) {
            throw new InputProblem("the paper can't be opened with " + keyFile + ": " + e.getMessage());
        } catch (LessonFormatException e) {
            throw new InputProblem(InputFiles.sentences(e));
        } catch (IOException e) {
            throw new InputProblem(e.getMessage());
        }
    }

    /** The files of a folder, in order of their names; hidden ones and sittings that are still running are left out. */
    static List<Path> within(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .filter(file -> !file.getFileName().toString().endsWith(".sitting.json"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new InputProblem(folder + ": this folder can't be read; look at its permissions");
        }
    }

    List<String> setAside(ClassResult result) {
        return new ClassReportPaper(result, PaperSize.A4, root.words()).setAside();
    }

    String text(ClassResult result) {
        StringBuilder out = new StringBuilder();
        for (PersonResult person : result.people()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s: %s of %s marks, %.0f %%, %s; receipt %s\n",
                    person.name(),
                    FindingWords.marks(person.total().marks()),
                    FindingWords.marks(person.total().maximum()),
                    100 * person.fraction(),
                    person.total().passed() ? "passed" : "not passed",
                    person.receipt()));
        }
        return out.toString();
    }

    /** A report for each person, certificates of those who passed, the class report, and the tables. */
    void write(ClassResult result, Path folder) {
        try {
            Files.createDirectories(folder);
            int number = 1;
            for (PersonResult person : result.people()) {
                PersonReport report = new PersonReport(result, person, PaperSize.A4, root.words());
                String name = String.format(Locale.ROOT, "%03d-%s", number++, word(person.name()));
                AtomicSave.save(folder.resolve(name + ".pdf"), report.report().pdf());
                if (person.total().passed()) {
                    AtomicSave.save(
                            folder.resolve(name + "-certificate.pdf"),
                            report.certificate().pdf());
                }
            }
            AtomicSave.save(
                    folder.resolve("class.pdf"),
                    new ClassReportPaper(result, PaperSize.A4, root.words())
                            .pages()
                            .pdf());
            ClassTable table = new ClassTable(result);
            write(folder.resolve("class.csv"), table.csv());
            write(folder.resolve("class.json"), table.json());
            write(folder.resolve("xapi.json"), new XapiStatements().of(result.records()));
        } catch (IOException e) {
            throw new InputProblem(FileFault.writing(folder, e));
        }
    }

    private static void write(Path file, String text) throws IOException {
        AtomicSave.save(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String word(String name) {
        String word = name.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        return word.length() > 60 ? word.substring(0, 60) : word;
    }
}
