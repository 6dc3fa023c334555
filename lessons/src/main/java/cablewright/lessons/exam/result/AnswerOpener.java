// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.result;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.Padding;
import cablewright.lessons.exam.seal.Receipt;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.exercise.Attempt;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.FileKind;
import cablewright.lessons.format.LessonFormatException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Opens sealed answers and sets those aside that can't be marked. */
final class AnswerOpener {

    /** Handing in may come so much after the time was up: nothing can be changed by then. */
    static final Duration GRACE = Duration.ofMinutes(15);

    private final PaperFile paper;
    private final ExaminerKey key;
    private final Optional<Instant> due;
    private final List<OpenedAnswers> opened = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();

    AnswerOpener(PaperFile paper, ExaminerKey key, Optional<Instant> due) {
        this.paper = paper;
        this.key = key;
        this.due = due;
    }

    /** Those that may be marked, by name and file. Of several by one person, or of one sitting, the earliest counts. */
    List<OpenedAnswers> opened() {
        List<OpenedAnswers> byTime = new ArrayList<>(opened);
        byTime.sort(Comparator.comparing(
                        (OpenedAnswers one) -> one.answers().handedInAt().orElseThrow())
                .thenComparing(OpenedAnswers::file));
        Set<String> names = new HashSet<>();
        Set<String> sittings = new HashSet<>();
        List<OpenedAnswers> first = new ArrayList<>();
        for (OpenedAnswers one : byTime) {
            boolean newName = names.add(one.answers().trainee().strip());
            boolean newSitting = sittings.add(one.answers().sittingId());
            if (newName && newSitting) {
                first.add(one);
            } else {
                setAside(one.file(), SetAside.Reason.DOUBLED, one.answers().trainee() + ", " + one.receipt());
            }
        }
        first.sort(Comparator.comparing((OpenedAnswers one) -> one.answers().trainee())
                .thenComparing(OpenedAnswers::file));
        return first;
    }

    List<SetAside> setAside() {
        return setAside.stream().sorted(Comparator.comparing(SetAside::file)).toList();
    }

    private void setAside(String file, SetAside.Reason reason, String detail) {
        setAside.add(new SetAside(file, reason, detail));
    }

    void open(AnswerFile file) {
        file.content()
                .ifPresentOrElse(
                        bytes -> open(file, bytes), () -> setAside(file.name(), SetAside.Reason.UNREADABLE, ""));
    }

    private void open(AnswerFile file, byte[] bytes) {
        try {
            byte[] plain = AgeSeal.open(key, bytes);
            ExamAnswers answers =
                    ((Document.OfAnswers) new DocumentReader().parse(file.name(), plain, FileKind.ANSWERS)).answers();
            check(answers)
                    .ifPresentOrElse(
                            reason -> setAside(file.name(), reason, answers.trainee()),
                            () -> opened.add(new OpenedAnswers(file.name(), Receipt.of(bytes), answers)));
        } catch (SealException e) {
            setAside(file.name(), reason(e.fault(), bytes), "");
        } catch (LessonFormatException e) {
            setAside(file.name(), SetAside.Reason.NOT_SOUND, e.problems().get(0).sentence());
        }
    }

    private static SetAside.Reason reason(SealException.Fault fault, byte[] bytes) {
        return switch (fault) {
            case NOT_SEALED -> SetAside.Reason.NOT_SEALED;
            case OTHER_KEY -> SetAside.Reason.OTHER_KEY;
            case CHANGED -> Padding.isWhole(bytes.length) ? SetAside.Reason.CHANGED : SetAside.Reason.CUT;
        };
    }

    private Optional<SetAside.Reason> check(ExamAnswers answers) {
        if (!answers.paperSha256().equals(paper.sha256())) {
            return Optional.of(SetAside.Reason.OTHER_PAPER);
        }
        if (!answers.attempts().stream().allMatch(this::isPossible)) {
            return Optional.of(SetAside.Reason.NOT_SOUND);
        }
        if (answers.handedInAt().isEmpty()) {
            return Optional.of(SetAside.Reason.NOT_HANDED_IN);
        }
        Instant handedIn = answers.handedInAt().get();
        boolean tooLong =
                answers.secondsUsed() > paper.paper().allowed().plus(GRACE).toSeconds();
        return tooLong || due.filter(handedIn::isAfter).isPresent()
                ? Optional.of(SetAside.Reason.LATE)
                : Optional.empty();
    }

    /** Whether the program could have written it: an item of the paper, permitted settings, choices of the question. */
    private boolean isPossible(Attempt attempt) {
        return paper.paper()
                .item(attempt.exerciseId())
                .filter(item ->
                        item.permitted().allows(attempt.settings(), item.start().end()))
                .filter(item -> attempt.flags().stream()
                        .allMatch(flag -> item.permitted().ends().contains(flag.end())
                                && item.permitted().velocity().allows(flag.velocityFraction())
                                && flag.stimulus().stream()
                                        .allMatch(item.permitted().stimuli()::contains)))
                .filter(item -> attempt.predictedChoiceId().isEmpty()
                        || item.question()
                                .filter(asked -> asked.isAnswer(
                                        attempt.predictedChoiceId().get(), attempt.predictedReasonId()))
                                .isPresent())
                .isPresent();
    }
}
