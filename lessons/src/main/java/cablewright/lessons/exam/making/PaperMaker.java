// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.making;

import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.ItemKey;
import cablewright.lessons.exam.paper.PaperChoice;
import cablewright.lessons.exam.paper.PaperItem;
import cablewright.lessons.exam.paper.PaperQuestion;
import cablewright.lessons.exam.paper.PortSamples;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.Padding;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.exercise.question.Prediction;
import cablewright.lessons.exercise.question.Reasons;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentWriter;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.line.ContourGrid;
import cablewright.simulator.port.SimulatedPort;
import cablewright.simulator.solve.PropagationCache;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Makes sealed papers. What could lead back to the cable is drawn anew for each paper: the order of items and of choices,
 * every name, and the seed of the noise.
 */
public final class PaperMaker {

    private static final int BYTES_PER_LINE = 3072;

    private final Random random;

    /** Makes a maker that draws from the system's source of randomness. */
    public PaperMaker() {
        this(new SecureRandom());
    }

    PaperMaker(Random random) {
        this.random = random;
    }

    /**
     * What the examiner says of an exam.
     *
     * @param title one line
     * @param rules what earns and costs marks, in Markdown
     * @param minutesAllowed time for the whole paper [min]
     * @param passMarkFraction share of the marks from which it is passed, 0 to 1
     */
    public record Terms(String title, String rules, int minutesAllowed, double passMarkFraction) {}

    /**
     * Makes a paper.
     *
     * @param lesson whose exercises are asked; its pages are left out
     * @param terms what the examiner says of the exam
     * @param publicKey public key of the examiner
     * @return the paper
     * @throws IllegalArgumentException if it can't be made; the message says what to change
     */
    public SealedPaper make(Lesson lesson, Terms terms, String publicKey) {
        List<Exercise> order = new ArrayList<>(lesson.exercises());
        Collections.shuffle(order, random);
        List<PaperItem> items = new ArrayList<>();
        List<ItemKey> keys = new ArrayList<>();
        for (Exercise exercise : order) {
            String itemId = "q" + (items.size() + 1);
            ItemKey key = key(itemId, exercise);
            keys.add(key);
            items.add(item(exercise, key));
        }
        Lesson asked = new Lesson(
                lesson.id(),
                lesson.title(),
                lesson.introduction(),
                lesson.worldNote(),
                terms.passMarkFraction(),
                lesson.exercises());
        byte[] part = new DocumentWriter().bytes(new Document.OfExaminersPart(new ExaminersPart(asked, keys)));
        return new SealedPaper(
                terms.title(),
                terms.rules(),
                lesson.worldNote(),
                terms.minutesAllowed(),
                terms.passMarkFraction(),
                publicKey,
                items,
                lines(AgeSeal.sealTo(publicKey, Padding.filled(part))));
    }

    private static List<String> lines(byte[] bytes) {
        List<String> lines = new ArrayList<>();
        for (int from = 0; from < bytes.length; from += BYTES_PER_LINE) {
            int to = Math.min(bytes.length, from + BYTES_PER_LINE);
            lines.add(Base64.getEncoder().encodeToString(java.util.Arrays.copyOfRange(bytes, from, to)));
        }
        return lines;
    }

    private ItemKey key(String itemId, Exercise exercise) {
        List<String> choices =
                exercise.prediction().map(asked -> shuffled(asked.choices())).orElse(List.of());
        List<String> reasons = exercise.prediction()
                .flatMap(Prediction::reasons)
                .map(asked -> shuffled(asked.choices()))
                .orElse(List.of());
        return new ItemKey(itemId, exercise.id(), choices, reasons);
    }

    private List<String> shuffled(List<Choice> choices) {
        List<String> ids = new ArrayList<>(choices.stream().map(Choice::id).toList());
        Collections.shuffle(ids, random);
        return ids;
    }

    private PaperItem item(Exercise exercise, ItemKey key) {
        return new PaperItem(
                key.itemId(),
                exercise.title(),
                exercise.brief(),
                exercise.cautions(),
                renamed(exercise.record()),
                exercise.instrument(),
                exercise.start(),
                exercise.permitted(),
                exercise.toleranceMetres(),
                exercise.prediction().map(asked -> question(asked, key)),
                random.nextLong(),
                exercise.endIsGiven(),
                ports(exercise));
    }

    /** An item that stands for an event has the event's name, and that it does is part of the answer. */
    private static AsBuiltRecord renamed(AsBuiltRecord record) {
        List<RecordedItem> items = new ArrayList<>();
        for (RecordedItem item : record.items()) {
            items.add(new RecordedItem("item-" + (items.size() + 1), item.positionMetres(), item.kind(), item.label()));
        }
        return new AsBuiltRecord(record.lengthMetres(), items, record.farEnd(), record.note(), record.mayLie());
    }

    private static PaperQuestion question(Prediction asked, ItemKey key) {
        List<PaperChoice> choices = new ArrayList<>();
        for (String id : key.choices()) {
            choices.add(choice(choices.size(), asked.choice(id).orElseThrow()));
        }
        List<PaperChoice> reasons = new ArrayList<>();
        Reasons given = asked.reasons().orElse(null);
        for (String id : key.reasons()) {
            reasons.add(choice(reasons.size(), given.choice(id).orElseThrow()));
        }
        return new PaperQuestion(asked.question(), choices, reasons);
    }

    private static PaperChoice choice(int index, Choice choice) {
        return new PaperChoice("choice-" + (index + 1), choice.text());
    }

    private static List<PortSamples> ports(Exercise exercise) {
        ContourGrid grid = PaperGrid.of(exercise);
        double edge = PaperGrid.shortestEdgeSeconds(exercise);
        double ohms = exercise.instrument().sourceOhms();
        PropagationCache cache = new PropagationCache();
        List<PortSamples> ports = new ArrayList<>();
        for (LineEnd end : exercise.permitted().ends()) {
            SimulatedPort port = new SimulatedPort(exercise.cable().seenFrom(end), ohms, cache);
            ports.add(PortSamples.of(end, ohms, grid, port.reflection(grid, grid.frequencies(), edge)));
        }
        return ports;
    }
}
