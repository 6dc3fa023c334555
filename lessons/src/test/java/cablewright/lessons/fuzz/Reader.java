// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.fuzz;

import cablewright.lessons.SampleExercises;
import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.RecoveryFolder;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.exam.ExamSamples;
import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.KeyFile;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import cablewright.lessons.marking.KeyedAnswer;
import cablewright.lessons.study.StudyMerge;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.exchange.ExchangeFormatException;
import cablewright.simulator.exchange.TraceCsvReader;
import cablewright.simulator.exchange.touchstone.TouchstoneReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.function.Supplier;

/**
 * Every reader of files, each with a sound file to begin from. What a reader is handed may be refused in the way that it
 * declares; anything else that is thrown is a fault.
 */
enum Reader {
    /** Cable file. */
    CABLE(Reader::cable) {
        @Override
        void read(byte[] bytes, Path folder) {
            document(bytes);
        }
    },
    /** Exercise file. */
    EXERCISE(() -> bytes(new Document.OfExercise(exercise()))) {
        @Override
        void read(byte[] bytes, Path folder) {
            document(bytes);
        }
    },
    /** Lesson file. */
    LESSON(() -> bytes(new Document.OfLesson(lesson()))) {
        @Override
        void read(byte[] bytes, Path folder) {
            document(bytes);
        }
    },
    /** Answers. */
    ATTEMPTS(() -> bytes(new Document.OfAttempts(new AttemptSheet("harbour", List.of(KeyedAnswer.of(exercise())))))) {
        @Override
        void read(byte[] bytes, Path folder) {
            document(bytes);
        }
    },
    /** Sealed paper. */
    PAPER(ExamSamples::paper) {
        @Override
        void read(byte[] bytes, Path folder) {
            document(bytes);
        }
    },
    /** Sitting that is kept while it runs. */
    SITTING(() -> bytes(new Document.OfAnswers(ExamSamples.answers()))) {
        @Override
        void read(byte[] bytes, Path folder) {
            document(bytes);
        }
    },
    /** Sealed answers. */
    SEALED_ANSWERS(
            () -> AgeSeal.sealTo(ExamSamples.KEY.publicKey(), bytes(new Document.OfAnswers(ExamSamples.answers())))) {
        @Override
        void read(byte[] bytes, Path folder) {
            try {
                byte[] opened = AgeSeal.open(ExamSamples.KEY, bytes);
                require(opened.length > 0, "nothing was opened");
            } catch (SealException e) {
                require(e.fault() != null && !e.getMessage().isBlank(), "no reason");
            }
        }
    },
    /** Key file. */
    KEY(() -> text(KeyFile.text(ExamSamples.KEY, Instant.EPOCH))) {
        @Override
        void read(byte[] bytes, Path folder) {
            try {
                KeyFile.parse("fuzz", bytes);
            } catch (IOException e) {
                require(e.getMessage().startsWith("fuzz"), "no file named");
            }
        }
    },
    /** Log of a trainee. */
    RECORDS(
            () -> text(
                    """
            {"version":1,"trainee":"Ada","lessonId":"harbour","exerciseId":"quay-3","committedAt":"2031-03-01T08:00:00Z",\
            "secondsTaken":95.5,"marks":4.0,"maximum":10.0,"hintsTaken":1,"needlessDigs":0,"damageLeft":0,\
            "damageMissed":0,"outcomes":[{"kind":"tap","truth":"damage","flaggedKind":"splice",\
            "flaggedVerdict":"damage","placeErrorMetres":-0.4,"marks":4.0}],"strayKinds":["short"]}
            """)) {
        @Override
        void read(byte[] bytes, Path folder) throws IOException {
            Files.write(folder.resolve("fuzz.jsonl"), bytes);
            ClassRecords.Contents read = new ClassRecords(folder).read();
            require(!read.records().isEmpty() || !read.faults().isEmpty() || isBlank(bytes), "a line is passed over");
        }
    },
    /** Touchstone, version 1. */
    TOUCHSTONE_1(() -> text("! line\n# MHz S RI R 75\n1 0.1 -0.2\n2 0.11 -0.21 ! end\n3 0.12 -0.22\n4 0.13 -0.23\n")) {
        @Override
        void read(byte[] bytes, Path folder) throws IOException {
            touchstone("x.s1p", bytes);
        }
    },
    /** Touchstone, version 2. */
    TOUCHSTONE_2(
            () -> text(
                    """
            [Version] 2.0
            # GHz S MA R 50
            [Number of Ports] 2
            [Two-Port Data Order] 12_21
            [Number of Frequencies] 2
            [Reference] 50 50
            [Mixed-Mode Order] D1,2 C1,2
            [Network Data]
            1 0.1 0 0.2 10 0.2 10 0.1 0
            2 0.1 1 0.2 20
              0.2 20 0.1 1
            [End]
            """)) {
        @Override
        void read(byte[] bytes, Path folder) throws IOException {
            touchstone("x.s2p", bytes);
        }
    },
    /** Trace as a table. */
    CSV(() -> text("# trace\ntime_ns,port_v\n0,0.5\n1.25,0.5\n2.5,-0.25\n3.75,1e-3\n")) {
        @Override
        void read(byte[] bytes, Path folder) throws IOException {
            try {
                TraceCsvReader.read("x.csv", new ByteArrayInputStream(bytes));
            } catch (ExchangeFormatException e) {
                requirePlain(e.getMessage());
            }
        }
    },
    /** Results of a study. */
    STUDY(() -> text("# cablewright study, format 1\n# rows 3, grid\nrow,a\n0,1\n1,2\n2,3\n")) {
        @Override
        void read(byte[] bytes, Path folder) throws IOException {
            Path file = Files.write(folder.resolve("fuzz.csv"), bytes);
            try {
                StudyMerge.of(List.of(file)).writeTo(OutputStream.nullOutputStream());
            } catch (IllegalArgumentException e) {
                require(String.valueOf(e.getMessage()).length() < 2000, "a message of " + e.getMessage());
            }
        }
    },
    /** The note of a recovered file. */
    RECOVERY(() -> text("/home/ada/lessons/harbour.json")) {
        @Override
        void read(byte[] bytes, Path folder) throws IOException {
            if (Files.notExists(folder.resolve("a.json"))) {
                Files.write(folder.resolve("a.json"), bytes(new Document.OfLesson(lesson())));
            }
            Files.write(folder.resolve("a.from"), bytes);
            List<RecoveryFolder.Found> found = new RecoveryFolder(folder).leftBehind(java.util.Locale.ROOT);
            require(found.size() == 1, "a bad note hides the document");
            require(found.get(0).document().equals(new BenchDocument(lesson(), 0)), "the document is another");
        }
    };

    private static final DocumentReader DOCUMENTS = new DocumentReader();

    private final byte[] sound;

    Reader(Supplier<byte[]> sound) {
        this.sound = sound.get();
    }

    /** A file that the reader takes. */
    byte[] sound() {
        return sound.clone();
    }

    /** Reads; whatever is thrown is a fault. */
    abstract void read(byte[] bytes, Path folder) throws IOException;

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] bytes(Document document) {
        return new DocumentWriter().bytes(document);
    }

    private static byte[] cable() {
        return bytes(new Document.OfCable(exercise().cable()));
    }

    private static Exercise exercise() {
        return SampleExercises.with(new Splice("s1", 31, 2e-9, 0, 0.02));
    }

    private static Lesson lesson() {
        return new Lesson("harbour", "Harbour", "Read it.", "All is invented.", 0.7, List.of(exercise()));
    }

    /** What is taken can be written, and reads back as the same: nothing was filled in or left out without a word. */
    private static void document(byte[] bytes) {
        Document document;
        try {
            document = DOCUMENTS.parse("x.json", bytes);
        } catch (LessonFormatException e) {
            e.problems().forEach(problem -> requirePlain(problem.sentence()));
            return;
        }
        try {
            Document again = DOCUMENTS.parse("x.json", bytes(document));
            require(document.equals(again), "it reads back as another");
        } catch (LessonFormatException e) {
            throw new AssertionError("what was taken is refused when read back: " + e.getMessage(), e);
        }
    }

    private static void touchstone(String name, byte[] bytes) throws IOException {
        try {
            TouchstoneReader.read(name, new ByteArrayInputStream(bytes));
        } catch (ExchangeFormatException e) {
            requirePlain(e.getMessage());
        }
    }

    private static boolean isBlank(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1)
                .replaceAll("[ \\t\\r\\n]", "")
                .isEmpty();
    }

    private static void requirePlain(String sentence) {
        require(sentence.chars().noneMatch(Character::isISOControl), "control characters in: " + sentence);
    }

    private static void require(boolean holds, String fault) {
        if (!holds) {
            throw new AssertionError(fault);
        }
    }
}
