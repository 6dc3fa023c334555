// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.classbook.XapiStatements;
import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.result.ClassTable;
import cablewright.lessons.exam.result.PersonResult;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.file.FileWord;
import cablewright.ui.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * A marked class as a folder of files: a report for each person, certificates of those who passed, the class report, and tables
 * as CSV, JSON and xAPI. Each file is written whole or not at all.
 */
public final class ClassReports {

    private final ClassResult result;
    private final PaperSize paper;
    private final Words words;

    /** Hears how far the writing has come. */
    @FunctionalInterface
    public interface Progress {

        /**
         * One more person's files are written.
         *
         * @param done how many people's are
         * @param all how many people there are
         */
        void done(int done, int all);
    }

    /**
     * Takes a marked class.
     *
     * @param result the class
     * @param paper the size of the paper
     * @param words the words, in the unit of length in which the paper is to be read
     */
    public ClassReports(ClassResult result, PaperSize paper, Words words) {
        this.result = result;
        this.paper = paper;
        this.words = words;
    }

    /**
     * Writes the files. Those of an earlier run with the same names are replaced.
     *
     * @param folder where to; it is made if it is not there
     * @param progress hears of each person
     * @param cancelled asked before each person; once true the work ends
     * @throws IOException if a file can't be written
     * @throws CancellationException if it was cancelled; what was written by then is whole
     */
    public void write(Path folder, Progress progress, BooleanSupplier cancelled) throws IOException {
        Files.createDirectories(folder);
        int number = 0;
        for (PersonResult person : result.people()) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("writing reports was cancelled");
            }
            number++;
            person(folder, String.format(Locale.ROOT, "%03d-%s", number, FileWord.of(person.name())), person);
            progress.done(number, result.people().size());
        }
        byte[] whole = new ClassReportPaper(result, paper, words).pages().pdf();
        AtomicSave.save(folder.resolve("class.pdf"), whole);
        ClassTable table = new ClassTable(result);
        text(folder.resolve("class.csv"), table.csv());
        text(folder.resolve("class.json"), table.json());
        text(folder.resolve("xapi.json"), new XapiStatements().of(result.records()));
    }

    private void person(Path folder, String name, PersonResult person) throws IOException {
        PersonReport report = new PersonReport(result, person, paper, words);
        AtomicSave.save(folder.resolve(name + ".pdf"), report.report().pdf());
        if (person.total().passed()) {
            AtomicSave.save(
                    folder.resolve(name + "-certificate.pdf"),
                    report.certificate().pdf());
        }
    }

    private static void text(Path file, String text) throws IOException {
        AtomicSave.save(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
