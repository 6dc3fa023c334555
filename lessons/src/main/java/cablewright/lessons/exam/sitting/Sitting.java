// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.Padding;
import cablewright.lessons.exam.seal.Receipt;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.LessonFormatException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * One person at one paper, from opening it to handing in. Each change is on disk before the method that makes it returns; a
 * sitting that was broken off is taken up where it was. After the time allowed nothing changes any more, but what is there can
 * still be handed in. It can be used from several threads.
 */
public final class Sitting implements AutoCloseable {

    private static final int ID_BYTES = 16;

    private final PaperFile paper;
    private final SittingFile file;
    private final SittingClock clock;
    private final String trainee;
    private final String sittingId;
    private final Instant startedAt;
    private final int runs;
    private final Map<String, ItemDraft> drafts = new LinkedHashMap<>();
    private Optional<Instant> handedInAt;

    private Sitting(PaperFile paper, SittingFile file, SittingClock clock, Optional<ExamAnswers> before, String who) {
        this.paper = paper;
        this.file = file;
        this.clock = clock;
        this.trainee = before.map(ExamAnswers::trainee).orElse(who);
        this.sittingId = before.map(ExamAnswers::sittingId).orElseGet(Sitting::freshId);
        this.startedAt = before.map(ExamAnswers::startedAt).orElseGet(clock::now);
        this.runs = before.map(ExamAnswers::runs).orElse(0) + 1;
        this.handedInAt = before.flatMap(ExamAnswers::handedInAt);
        for (PaperItem item : paper.paper().items()) {
            Optional<Attempt> kept = before.flatMap(answers -> answers.attempt(item.id()));
            drafts.put(item.id(), kept.map(ItemDraft::of).orElseGet(() -> ItemDraft.fresh(item)));
        }
    }

    private static String freshId() {
        byte[] id = new byte[ID_BYTES];
        new SecureRandom().nextBytes(id);
        return HexFormat.of().formatHex(id);
    }

    /**
     * Begins a sitting, or takes it up where it was broken off.
     *
     * @param paper the paper
     * @param trainee who; where a sitting is taken up, the name under which it was begun stays
     * @param kept where the sitting is kept
     * @param wall the machine's clock
     * @param nanos a counter of nanoseconds that nobody can set, such as {@code System::nanoTime}
     * @return the sitting; close it at the end
     * @throws IOException if the file can't be used, or belongs to another paper
     * @throws LessonFormatException if the file is not sound
     */
    public static Sitting open(PaperFile paper, String trainee, Path kept, Clock wall, LongSupplier nanos)
            throws IOException, LessonFormatException {
        SittingFile file = SittingFile.open(kept);
        try {
            Optional<ExamAnswers> before = file.read();
            if (before.isPresent() && !before.get().paperSha256().equals(paper.sha256())) {
                throw new IOException(kept + " belongs to another paper; choose another name for this sitting");
            }
            SittingClock clock = before.map(it ->
                            SittingClock.takenUp(wall, nanos, it.secondsUsed(), it.savedAt(), it.clockJumpSeconds()))
                    .orElseGet(() -> SittingClock.begun(wall, nanos));
            Sitting sitting = new Sitting(paper, file, clock, before, trainee);
            sitting.save();
            return sitting;
        } catch (IOException | LessonFormatException | RuntimeException e) {
            file.close();
            throw e;
        }
    }

    /**
     * Returns the paper.
     *
     * @return what is asked
     */
    public SealedPaper paper() {
        return paper.paper();
    }

    /**
     * Returns who sits.
     *
     * @return the name
     */
    public String trainee() {
        return trainee;
    }

    /**
     * Returns what is answered to an item so far.
     *
     * @param itemId the item
     * @return its draft
     */
    public synchronized ItemDraft draft(String itemId) {
        return Optional.ofNullable(drafts.get(itemId))
                .orElseThrow(() -> new IllegalArgumentException("the paper has no item \"" + itemId + "\""));
    }

    /**
     * Changes what is answered to an item, and keeps it.
     *
     * @param itemId the item
     * @param draft what is answered
     * @throws IOException if it can't be written; it is then known here but not on disk
     * @throws IllegalStateException if the sitting is over
     * @throws IllegalArgumentException if settings or flags are not permitted
     */
    public synchronized void change(String itemId, ItemDraft draft) throws IOException {
        if (isOver()) {
            throw new IllegalStateException(
                    handedInAt.isPresent() ? "the answers are handed in already" : "the time is up");
        }
        PaperItem item = paper().item(itemId)
                .orElseThrow(() -> new IllegalArgumentException("the paper has no item \"" + itemId + "\""));
        requirePermitted(item, draft);
        drafts.put(itemId, draft.openedAt(clock.now()));
        save();
    }

    private static void requirePermitted(PaperItem item, ItemDraft draft) {
        boolean endsFit =
                draft.flags().stream().map(Flag::end).allMatch(item.permitted().ends()::contains);
        if (!endsFit || !item.permitted().allows(draft.settings(), item.start().end())) {
            throw new IllegalArgumentException("settings of \"" + item.id() + "\" are not permitted by the paper");
        }
        draft.choiceId().ifPresent(choice -> {
            if (item.question()
                    .filter(asked -> asked.isAnswer(choice, draft.reasonId()))
                    .isEmpty()) {
                throw new IllegalArgumentException("the answer to \"" + item.id() + "\" is none of its choices");
            }
        });
    }

    /**
     * Keeps the time that was used; call it every few seconds.
     *
     * @throws IOException if it can't be written
     */
    public synchronized void tick() throws IOException {
        if (handedInAt.isEmpty()) {
            save();
        }
    }

    /**
     * Returns the time that is left.
     *
     * @return time left, zero once it is up
     */
    public synchronized Duration left() {
        double left = paper().allowed().toSeconds() - clock.usedSeconds();
        return Duration.ofMillis(Math.round(1000 * Math.max(0, left)));
    }

    /**
     * Returns whether nothing can be changed any more.
     *
     * @return whether the answers are handed in or the time is up
     */
    public synchronized boolean isOver() {
        return handedInAt.isPresent() || left().isZero();
    }

    /**
     * Returns whether the answers were handed in.
     *
     * @return whether they were
     */
    public synchronized boolean isHandedIn() {
        return handedInAt.isPresent();
    }

    private ExamAnswers answers() {
        Instant now = clock.now();
        List<Attempt> attempts = new ArrayList<>();
        drafts.forEach((id, draft) -> {
            if (draft.openedAt().isPresent()) {
                attempts.add(draft.attempt(id, trainee, now));
            }
        });
        return new ExamAnswers(
                paper.sha256(),
                trainee,
                sittingId,
                startedAt,
                now,
                handedInAt,
                Math.min(clock.usedSeconds(), 1e9),
                runs,
                Math.min(clock.jumpSeconds(), 1e9),
                attempts);
    }

    private void save() throws IOException {
        file.save(answers());
    }

    /**
     * Hands in: seals the answers to the examiner and writes them. It can be done again should the file get lost; the answers
     * are then the same, sealed anew, so that the receipt is another one.
     *
     * @param target the file of sealed answers; it must not be there yet
     * @return the file and its receipt
     * @throws IOException if it can't be written; nothing is handed in then
     */
    public synchronized HandedIn handIn(Path target) throws IOException {
        if (Files.exists(target)) {
            throw new IOException(target + " is there already; choose another name");
        }
        Optional<Instant> before = handedInAt;
        handedInAt = Optional.of(before.orElseGet(clock::now));
        try {
            byte[] plain = new DocumentWriter().bytes(new Document.OfAnswers(answers()));
            byte[] sealed = AgeSeal.sealTo(paper().examinerKey(), Padding.filled(plain));
            AtomicSave.save(target, sealed);
            save();
            return new HandedIn(target, Receipt.of(sealed));
        } catch (IOException e) {
            handedInAt = before;
            throw e;
        }
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
