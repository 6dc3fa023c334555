// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.result.AnswerFile;
import cablewright.lessons.exam.result.ClassMarking;
import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.result.PersonResult;
import cablewright.lessons.exam.seal.KeyFile;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.file.FileFault;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.text.Texts;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.InputFiles;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.print.ClassReportPaper;
import cablewright.ui.print.ClassReports;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.Quantities;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Marks the sealed answers of a class from the command line. */
final class ClassMarker {

    private final RootCommand root;
    private final PaperFile paper;
    private final Path keyFile;
    private final Optional<Instant> due;
    private final BooleanSupplier stopped;
    private final Texts texts;
    private int done;
    private int all;

    ClassMarker(RootCommand root, PaperFile paper, Path keyFile, Optional<Instant> due, BooleanSupplier stopped) {
        this.root = root;
        this.paper = paper;
        this.keyFile = keyFile;
        this.due = due;
        this.stopped = stopped;
        this.texts = ExamTexts.of(root);
    }

    ClassResult mark(List<Path> files) {
        try {
            ClassMarking marking = new ClassMarking(paper, KeyFile.read(keyFile), due);
            return marking.mark(files.stream().map(AnswerFile::read).toList(), this::heard, stopped);
        } catch (CancellationException e) {
            throw new InputProblem(texts.say("mark.stopped", String.valueOf(done), String.valueOf(all)));
        } catch (SealException e) {
            throw new InputProblem(texts.say("mark.cantOpen", keyFile, e.getMessage()));
        } catch (LessonFormatException e) {
            throw new InputProblem(InputFiles.sentences(e));
        } catch (IOException e) {
            throw new InputProblem(e.getMessage());
        }
    }

    private void heard(int marked, int people) {
        done = marked;
        all = people;
        root.remark(texts.say("mark.done", String.valueOf(marked), String.valueOf(people)));
    }

    static List<Path> within(RootCommand root, Path folder) {
        try {
            return AnswerFile.within(folder);
        } catch (IOException e) {
            throw new InputProblem(ExamTexts.of(root).say("mark.folder", folder));
        }
    }

    List<String> setAside(ClassResult result) {
        return new ClassReportPaper(result, PaperSize.A4, root.words()).setAside();
    }

    String text(ClassResult result) {
        StringBuilder out = new StringBuilder();
        for (PersonResult person : result.people()) {
            out.append(texts.say(
                            "mark.row",
                            person.name(),
                            FindingWords.marks(person.total().marks()),
                            FindingWords.marks(person.total().maximum()),
                            Quantities.number(100 * person.fraction(), 0),
                            texts.say(person.total().passed() ? "mark.passed" : "mark.failed"),
                            person.receipt()))
                    .append('\n');
        }
        return out.toString();
    }

    void write(ClassResult result, Path folder) {
        done = 0;
        try {
            new ClassReports(result, PaperSize.A4, root.words())
                    .write(folder, (written, people) -> done = written, stopped);
        } catch (CancellationException e) {
            String people = String.valueOf(result.people().size());
            throw new InputProblem(texts.say("mark.stopped.reports", String.valueOf(done), people, folder));
        } catch (IOException e) {
            throw new InputProblem(FileFault.writing(folder, e));
        }
    }
}
