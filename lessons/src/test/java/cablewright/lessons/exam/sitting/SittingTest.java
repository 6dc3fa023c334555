// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exam.ExamSamples;
import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.Receipt;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.FileKind;
import cablewright.simulator.cable.EventKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SittingTest {

    private static final Instant NINE = Instant.parse("2031-05-04T09:00:00Z");

    @TempDir
    private Path folder;

    private PaperFile paper;
    private PaperItem item;
    private Instant wall = NINE;
    private long nanos = 5;

    private final Clock clock = new Clock() {
        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return wall;
        }
    };

    @BeforeEach
    void makeAPaper() throws Exception {
        paper = PaperFile.of("paper", ExamSamples.paper());
        item = paper.paper().items().get(0);
    }

    private void pass(Duration time) {
        wall = wall.plus(time);
        nanos += time.toNanos();
    }

    private Sitting open() throws Exception {
        return Sitting.open(paper, "Ada", folder.resolve("ada.json"), clock, () -> nanos);
    }

    private Flag flag(String letter) {
        return new Flag(
                letter, item.start().end(), 12.5, OptionalDouble.empty(), EventKind.PINCH, Verdict.DAMAGE, 0.66);
    }

    private ExamAnswers opened(Path file) throws Exception {
        byte[] plain = AgeSeal.open(ExamSamples.KEY, Files.readAllBytes(file));
        return ((Document.OfAnswers) new DocumentReader().parse("answers", plain, FileKind.ANSWERS)).answers();
    }

    @Test
    void itIsTakenUpWhereItWasBrokenOff() throws Exception {
        try (Sitting first = open()) {
            pass(Duration.ofMinutes(10));
            first.change(item.id(), first.draft(item.id()).withFlags(List.of(flag("A"))));
        }
        pass(Duration.ofMinutes(5));
        try (Sitting second = open()) {
            assertEquals(List.of(flag("A")), second.draft(item.id()).flags());
            assertEquals(Duration.ofMinutes(45), second.left());
        }
    }

    @Test
    void aClockPutBackOrForwardChangesNothingWithinARunAndIsNoted() throws Exception {
        try (Sitting sitting = open()) {
            pass(Duration.ofMinutes(20));
            wall = wall.minus(Duration.ofMinutes(90));
            assertEquals(Duration.ofMinutes(40), sitting.left());
            wall = wall.plus(Duration.ofHours(9));
            assertEquals(Duration.ofMinutes(40), sitting.left());
            sitting.handIn(folder.resolve("answers.age"));
        }
        ExamAnswers answers = opened(folder.resolve("answers.age"));
        assertEquals(1200, answers.secondsUsed(), 0.01);
        assertEquals(7.5 * 3600, answers.clockJumpSeconds(), 0.01);
    }

    @Test
    void aClockPutBackBetweenRunsIsNoted() throws Exception {
        try (Sitting sitting = open()) {
            pass(Duration.ofMinutes(20));
            sitting.tick();
        }
        wall = wall.minus(Duration.ofMinutes(15));
        try (Sitting sitting = open()) {
            assertEquals(Duration.ofMinutes(40), sitting.left());
            sitting.handIn(folder.resolve("answers.age"));
        }
        ExamAnswers answers = opened(folder.resolve("answers.age"));
        assertEquals(900, answers.clockJumpSeconds(), 0.01);
        assertEquals(2, answers.runs());
    }

    @Test
    void nothingChangesOnceTheTimeIsUpButItCanStillBeHandedIn() throws Exception {
        try (Sitting sitting = open()) {
            sitting.change(item.id(), sitting.draft(item.id()).withFlags(List.of(flag("A"))));
            pass(Duration.ofMinutes(60));
            assertTrue(sitting.isOver());
            assertThrows(
                    IllegalStateException.class,
                    () -> sitting.change(item.id(), sitting.draft(item.id()).withFlags(List.of())));
            sitting.handIn(folder.resolve("answers.age"));
        }
        assertEquals(
                List.of(flag("A")),
                opened(folder.resolve("answers.age"))
                        .attempt(item.id())
                        .orElseThrow()
                        .flags());
    }

    @Test
    void answersAreBoundToThePaperAndTheReceiptToTheAnswers() throws Exception {
        try (Sitting sitting = open()) {
            sitting.change(item.id(), sitting.draft(item.id()).withFlags(List.of(flag("A"))));
            HandedIn handed = sitting.handIn(folder.resolve("answers.age"));
            assertEquals(Receipt.of(Files.readAllBytes(handed.file())), handed.receipt());
            assertTrue(sitting.isOver());
            assertThrows(IOException.class, () -> sitting.handIn(folder.resolve("answers.age")));
        }
        ExamAnswers answers = opened(folder.resolve("answers.age"));
        assertEquals(paper.sha256(), answers.paperSha256());
        assertEquals("Ada", answers.trainee());
        assertEquals(NINE, answers.handedInAt().orElseThrow());
    }

    @Test
    void theLengthOfAnswersSaysNothingOfThem() throws Exception {
        long[] lengths = new long[2];
        for (int i = 0; i < 2; i++) {
            wall = NINE;
            Path kept = folder.resolve("s" + i + ".json");
            try (Sitting sitting = Sitting.open(paper, "Ada", kept, clock, () -> nanos)) {
                List<Flag> flags = i == 0 ? List.of() : List.of(flag("A"), flag("B"), flag("C"));
                sitting.change(item.id(), sitting.draft(item.id()).withFlags(flags));
                lengths[i] = Files.size(sitting.handIn(folder.resolve("a" + i)).file());
            }
        }
        assertEquals(lengths[0], lengths[1]);
    }

    @Test
    void twoProgramsDoNotShareASitting() throws Exception {
        try (Sitting sitting = open()) {
            assertFalse(sitting.isOver());
            assertThrows(IOException.class, this::open);
        }
        open().close();
    }

    @Test
    void aSittingOfAnotherPaperIsNotTakenUp() throws Exception {
        open().close();
        String before = paper.sha256();
        paper = PaperFile.of("paper", ExamSamples.paper());
        assertNotEquals(before, paper.sha256());
        assertThrows(IOException.class, this::open);
    }

    @Test
    void whatIsNotPermittedIsRefused() throws Exception {
        try (Sitting sitting = open()) {
            ItemDraft draft = sitting.draft(item.id());
            ItemDraft loud = draft.withSettings(draft.settings().withGainDecibels(79.5));
            assertThrows(IllegalArgumentException.class, () -> sitting.change(item.id(), loud));
            assertThrows(
                    IllegalArgumentException.class,
                    () -> sitting.change(item.id(), draft.withAnswer("choice-1", java.util.Optional.empty())));
        }
    }
}
