// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.lessons.file.FileFault;
import cablewright.lessons.format.codec.At;
import cablewright.lessons.format.codec.Codecs;
import cablewright.lessons.format.codec.ReadingState;
import cablewright.lessons.format.codec.Shown;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.file.PlainFile;
import cablewright.simulator.line.CableType;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads files. Whatever is wrong with one is said in words, all of it at once, and nothing is half read. It holds no state
 * and can be used from several threads.
 */
public final class DocumentReader {

    /** Largest file that is read [bytes]. */
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    /** Largest sealed paper that is read [bytes]. */
    public static final int MOST_PAPER_BYTES = 128 * 1024 * 1024;

    private static final int HEAD_BYTES = 256;

    private static final String FORMAT = "format";
    private static final String VERSION = "version";
    private static final String TYPES = "types";

    private final JsonSource source = new JsonSource();
    private final Codecs codecs = new Codecs();

    /** Makes a reader. */
    public DocumentReader() {}

    /**
     * Reads a cable file.
     *
     * @param file the file
     * @return the cable
     * @throws LessonFormatException if it can't be read, or is of another kind
     */
    public Cable readCable(Path file) throws LessonFormatException {
        return ((Document.OfCable) read(file, FileKind.CABLE)).cable();
    }

    /**
     * Reads a lesson file.
     *
     * @param file the file
     * @return the lesson
     * @throws LessonFormatException if it can't be read, or is of another kind
     */
    public Lesson readLesson(Path file) throws LessonFormatException {
        return ((Document.OfLesson) read(file, FileKind.LESSON)).lesson();
    }

    /**
     * Reads a file of attempts.
     *
     * @param file the file
     * @return the attempts
     * @throws LessonFormatException if it can't be read, or is of another kind
     */
    public AttemptSheet readAttempts(Path file) throws LessonFormatException {
        return ((Document.OfAttempts) read(file, FileKind.ATTEMPTS)).sheet();
    }

    /**
     * Reads a file of any kind.
     *
     * @param file the file
     * @return what it holds
     * @throws LessonFormatException if it can't be read
     */
    public Document read(Path file) throws LessonFormatException {
        return parse(file.toString(), bytes(file), Optional.empty());
    }

    private Document read(Path file, FileKind wanted) throws LessonFormatException {
        return parse(file.toString(), bytes(file), Optional.of(wanted));
    }

    /**
     * What a file holds, and whether all of it was understood.
     *
     * @param document what was read
     * @param isNewer whether a newer program wrote it: fields that are not known here were left out, so it may be looked at
     *     but must not be written back
     */
    public record Opened(Document document, boolean isNewer) {}

    /**
     * Opens a file of any kind, also one of a newer version as far as it is understood here.
     *
     * @param file the file
     * @return what it holds
     * @throws LessonFormatException if it can't be read, or if a newer one holds what can't be left out
     */
    public Opened open(Path file) throws LessonFormatException {
        byte[] bytes = bytes(file);
        boolean isNewer = isNewer(source.tree(file.toString(), bytes));
        ReadingState reading = isNewer ? ReadingState.ofNewer() : new ReadingState();
        return new Opened(parse(file.toString(), bytes, Optional.empty(), reading), isNewer);
    }

    private static boolean isNewer(JsonNode root) {
        JsonNode version = root.get(VERSION);
        return version != null && version.isIntegralNumber() && version.asLong() > FileKind.VERSION;
    }

    /**
     * Reads what a file would hold.
     *
     * @param name what messages call it
     * @param bytes its bytes
     * @return what it holds
     * @throws LessonFormatException if it can't be read
     */
    public Document parse(String name, byte[] bytes) throws LessonFormatException {
        return parse(name, bytes, Optional.empty());
    }

    /**
     * Reads what a file of one kind would hold.
     *
     * @param name what messages call it
     * @param bytes its bytes
     * @param wanted the kind
     * @return what it holds, of that kind
     * @throws LessonFormatException if it can't be read, or is of another kind
     */
    public Document parse(String name, byte[] bytes, FileKind wanted) throws LessonFormatException {
        return parse(name, bytes, Optional.of(wanted));
    }

    /** A sealed paper holds responses and is longer than other files; it says in its first line what it is. */
    private static boolean saysPaper(byte[] head) {
        return new String(head, StandardCharsets.ISO_8859_1).contains('"' + FileKind.PAPER.format() + '"');
    }

    private static byte[] bytes(Path file) throws LessonFormatException {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw JsonSource.problem(name, "is a folder", "name a file in it");
        }
        if (!Files.exists(file)) {
            throw JsonSource.problem(name, "does not exist", "look at the name and the folder");
        }
        if (!Files.isRegularFile(file)) {
            throw JsonSource.problem(name, "is a device or a pipe", "save its contents as a file first");
        }
        try (InputStream in = PlainFile.open(file, Long.MAX_VALUE)) {
            byte[] head = in.readNBytes(HEAD_BYTES);
            int most = saysPaper(head) ? MOST_PAPER_BYTES : MOST_BYTES;
            long size = Files.size(file);
            byte[] rest = size > most ? new byte[0] : in.readNBytes(most - head.length + 1);
            long length = Math.max(size, (long) head.length + rest.length);
            if (length > most) {
                throw JsonSource.problem(
                        name,
                        "has " + length + " bytes",
                        "at most " + most + " are allowed, so this is most likely not a file of ours");
            }
            byte[] bytes = Arrays.copyOf(head, head.length + rest.length);
            System.arraycopy(rest, 0, bytes, head.length, rest.length);
            return bytes;
        } catch (IOException e) {
            throw JsonSource.problem(name, "can't be read (" + FileFault.sentence(e) + ")", "look at its permissions");
        }
    }

    private Document parse(String name, byte[] bytes, Optional<FileKind> wanted) throws LessonFormatException {
        return parse(name, bytes, wanted, new ReadingState());
    }

    private Document parse(String name, byte[] bytes, Optional<FileKind> wanted, ReadingState reading)
            throws LessonFormatException {
        JsonNode root = source.tree(name, bytes);
        if (!root.isObject()) {
            throw JsonSource.problem(
                    name,
                    "holds " + Shown.value(root),
                    "a file of ours is an object in braces with a field \"format\"");
        }
        FileKind kind = kind(name, root, wanted);
        if (!reading.leavesOutWhatIsNew()) {
            requireVersion(name, root);
        }
        refuseUnknown(root, kind, reading);
        readTypes(root, reading);
        Optional<Object> content = Optional.empty();
        if (root.has(kind.field())) {
            content = codecs.content(kind.content()).read(root.get(kind.field()), At.ROOT.field(kind.field()), reading);
        } else {
            reading.problem(At.ROOT.field(kind.field()), "is missing", "it must be given");
        }
        if (!reading.isSound() || content.isEmpty()) {
            throw new LessonFormatException(name, reading.problems());
        }
        return document(kind, content.get());
    }

    private static FileKind kind(String name, JsonNode root, Optional<FileKind> wanted) throws LessonFormatException {
        JsonNode format = root.get(FORMAT);
        if (format == null) {
            throw JsonSource.problem(name, "has no field \"format\"", "it must be one of " + FileKind.allFormats());
        }
        Optional<FileKind> kind = FileKind.ofFormat(format.asText());
        if (kind.isEmpty()) {
            throw JsonSource.problem(
                    name,
                    "has " + Shown.value(format) + " as its format",
                    "it must be one of " + FileKind.allFormats());
        }
        if (wanted.isPresent() && wanted.get() != kind.get()) {
            throw JsonSource.problem(
                    name,
                    "has the format " + kind.get().format(),
                    "a file with the format " + wanted.get().format() + " is wanted here");
        }
        return kind.get();
    }

    private static void requireVersion(String name, JsonNode root) throws LessonFormatException {
        JsonNode version = root.get(VERSION);
        if (version == null || !version.isIntegralNumber() || version.asLong() < 1) {
            throw JsonSource.problem(
                    name,
                    version == null ? "has no field \"version\"" : "has the version " + Shown.value(version),
                    "it must be a whole number from 1 to " + FileKind.VERSION);
        }
        if (!version.canConvertToInt() || version.intValue() > FileKind.VERSION) {
            throw JsonSource.problem(
                    name,
                    "has version " + Shown.value(version) + " and was written by a newer program",
                    "this program reads up to version " + FileKind.VERSION + ": update it");
        }
    }

    private static void refuseUnknown(JsonNode root, FileKind kind, ReadingState reading) {
        List<String> allowed = kind.holdsCables()
                ? List.of(FORMAT, VERSION, TYPES, kind.field())
                : List.of(FORMAT, VERSION, kind.field());
        for (Map.Entry<String, JsonNode> field : root.properties()) {
            if (!allowed.contains(field.getKey()) && !reading.leavesOutWhatIsNew()) {
                reading.problem(
                        At.ROOT.field(field.getKey()),
                        "is not a field that is known here",
                        "remove it, or use one of " + String.join(", ", allowed));
            }
        }
    }

    private void readTypes(JsonNode root, ReadingState reading) {
        if (!root.has(TYPES)) {
            return;
        }
        At at = At.ROOT.field(TYPES);
        List<?> types =
                (List<?>) codecs.types().read(root.get(TYPES), at, reading).orElse(List.of());
        for (int i = 0; i < types.size(); i++) {
            reading.addType((CableType) types.get(i), at.entry(i));
        }
    }

    private static Document document(FileKind kind, Object content) {
        return switch (kind) {
            case CABLE -> new Document.OfCable((Cable) content);
            case EXERCISE -> new Document.OfExercise((Exercise) content);
            case LESSON -> new Document.OfLesson((Lesson) content);
            case ATTEMPTS -> new Document.OfAttempts((AttemptSheet) content);
            case PAPER -> new Document.OfPaper((SealedPaper) content);
            case EXAMINERS_PART -> new Document.OfExaminersPart((ExaminersPart) content);
            case ANSWERS -> new Document.OfAnswers((ExamAnswers) content);
            case WORK -> new Document.OfWork((UnfinishedWork) content);
        };
    }
}
