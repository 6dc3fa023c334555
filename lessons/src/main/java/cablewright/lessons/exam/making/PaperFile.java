// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.making;

import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.Receipt;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.format.Document;
import cablewright.lessons.format.DocumentReader;
import cablewright.lessons.format.DocumentWriter;
import cablewright.lessons.format.FileKind;
import cablewright.lessons.format.LessonFormatException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;

/**
 * A sealed paper as a file.
 *
 * @param paper the paper
 * @param sha256 SHA-256 of the file's bytes, to which answers are bound
 */
public record PaperFile(SealedPaper paper, String sha256) {

    /** Largest file of a paper that is read [bytes]. */
    public static final int MOST_BYTES = DocumentReader.MOST_PAPER_BYTES;

    /**
     * Writes a paper.
     *
     * @param paper the paper
     * @return the bytes of its file
     */
    public static byte[] bytes(SealedPaper paper) {
        return new DocumentWriter().bytes(new Document.OfPaper(paper));
    }

    /**
     * Reads a paper.
     *
     * @param file the file
     * @return the paper
     * @throws IOException if it can't be read, or is too large
     * @throws LessonFormatException if it is no sound paper
     */
    public static PaperFile read(Path file) throws IOException, LessonFormatException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new IOException(file + " has more than " + MOST_BYTES + " bytes, so it is not a paper of ours");
            }
            return of(file.toString(), bytes);
        }
    }

    /**
     * Reads a paper from the bytes of its file.
     *
     * @param name what messages call it
     * @param bytes the bytes
     * @return the paper
     * @throws LessonFormatException if it is no sound paper
     */
    public static PaperFile of(String name, byte[] bytes) throws LessonFormatException {
        Document.OfPaper document = (Document.OfPaper) new DocumentReader().parse(name, bytes, FileKind.PAPER);
        return new PaperFile(document.paper(), Receipt.sha256(bytes));
    }

    /**
     * Opens the examiner's part.
     *
     * @param key the examiner's key
     * @return the part
     * @throws SealException if the key is another one, or the paper was changed
     * @throws LessonFormatException if what was sealed is not sound
     */
    public ExaminersPart open(ExaminerKey key) throws SealException, LessonFormatException {
        ByteArrayOutputStream sealed = new ByteArrayOutputStream();
        for (String line : paper.sealed()) {
            sealed.writeBytes(Base64.getDecoder().decode(line));
        }
        String name = "the examiner's part of \"" + paper.title() + "\"";
        byte[] opened = AgeSeal.open(key, sealed.toByteArray());
        return ((Document.OfExaminersPart) new DocumentReader().parse(name, opened, FileKind.EXAMINERS_PART)).part();
    }
}
