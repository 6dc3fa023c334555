// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import cablewright.lessons.exercise.Lesson;
import cablewright.ui.words.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A lesson as a QTI 3.0 package: a manifest, a test, an item for each question, and its picture. Source: 1EdTech, Question and Test
 * Interoperability, Assessment, Section and Item Information Model 3.0 (1 May 2022), and its Best Practices and
 * Implementation Guide.
 */
public final class QtiPackage {

    private static final String IMSCP = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";

    private final Lesson lesson;
    private final List<SchoolQuestion> questions;
    private final String language;

    /**
     * Makes a package of a lesson.
     *
     * @param lesson the lesson
     * @param words the words, in the unit of length in which places are asked
     */
    public QtiPackage(Lesson lesson, Words words) {
        this.lesson = lesson;
        this.questions = new SchoolQuestions(words).of(lesson);
        this.language =
                words.locale().getLanguage().isEmpty() ? "en" : words.locale().getLanguage();
    }

    /**
     * Writes the package. The same lesson gives the same bytes.
     *
     * @return a ZIP file
     */
    public byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            put(zip, "imsmanifest.xml", text(manifest()));
            put(zip, "test.xml", text(test()));
            for (SchoolQuestion question : questions) {
                put(zip, "items/" + question.id() + ".xml", text(new QtiItem(question, language).xml()));
                if (question.picture().length > 0) {
                    put(zip, "items/" + question.id() + ".png", question.picture());
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException("memory could not be written", e);
        }
        return bytes.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }

    private static byte[] text(String xml) {
        return xml.getBytes(StandardCharsets.UTF_8);
    }

    private String manifest() {
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<manifest xmlns=\"" + IMSCP
                + "\" identifier=\"cablewright-" + Markup.escaped(lesson.id()) + "\">\n"
                + "  <metadata><schema>QTI Package</schema><schemaversion>3.0.0</schemaversion></metadata>\n"
                + "  <organizations/>\n  <resources>\n"
                + "    <resource identifier=\"test\" type=\"imsqti_test_xmlv3p0\" href=\"test.xml\">\n"
                + "      <file href=\"test.xml\"/>\n");
        questions.forEach(one -> out.append("      <dependency identifierref=\"" + QtiItem.name(one) + "\"/>\n"));
        out.append("    </resource>\n");
        for (SchoolQuestion one : questions) {
            String file = "items/" + one.id();
            out.append("    <resource identifier=\"" + QtiItem.name(one) + "\" type=\"imsqti_item_xmlv3p0\" href=\""
                    + file + ".xml\">\n      <file href=\"" + file + ".xml\"/>\n");
            if (one.picture().length > 0) {
                out.append("      <file href=\"" + file + ".png\"/>\n");
            }
            out.append("    </resource>\n");
        }
        return out.append("  </resources>\n</manifest>\n").toString();
    }

    private String test() {
        StringBuilder out =
                new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<qti-assessment-test xmlns=\""
                        + QtiItem.NAMESPACE + "\" identifier=\"test\" title=\"" + Markup.escaped(lesson.title())
                        + "\">\n"
                        + "  <qti-test-part identifier=\"part\" navigation-mode=\"nonlinear\" submission-mode=\"individual\">\n"
                        + "    <qti-assessment-section identifier=\"section\" title=\"" + Markup.escaped(lesson.title())
                        + "\" visible=\"true\">\n");
        for (SchoolQuestion one : questions) {
            out.append("      <qti-assessment-item-ref identifier=\"" + QtiItem.name(one) + "\" href=\"items/"
                    + one.id() + ".xml\"/>\n");
        }
        return out.append("    </qti-assessment-section>\n  </qti-test-part>\n</qti-assessment-test>\n")
                .toString();
    }
}
