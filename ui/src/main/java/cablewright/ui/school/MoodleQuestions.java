// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import cablewright.lessons.exercise.Lesson;
import cablewright.ui.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/**
 * A lesson as Moodle XML, the question format of the Moodle learning management system: one category, and in it one question for
 * each part, numerical or multiple choice. Source: Moodle documentation, "Moodle XML format", sections "Overall structure",
 * "Multiple choice" and "Numerical"; tolerance and pictures as its importer reads them.
 */
public final class MoodleQuestions {

    private static final String PICTURE = "trace.png";
    private static final double PERCENT = 100;

    private final List<SchoolQuestion> questions;
    private final String category;

    /**
     * Makes questions of a lesson.
     *
     * @param lesson the lesson
     * @param words the words, in the unit of length in which places are asked
     */
    public MoodleQuestions(Lesson lesson, Words words) {
        this.questions = new SchoolQuestions(words).of(lesson);
        this.category = lesson.title();
    }

    /**
     * Writes the questions.
     *
     * @return the file
     */
    public byte[] bytes() {
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<quiz>\n");
        out.append("  <question type=\"category\">\n    <category><text>$course$/top/")
                // A slash would part a category in two.
                .append(Markup.escaped(category.replace("/", "//")))
                .append("</text></category>\n  </question>\n");
        for (SchoolQuestion question : questions) {
            question.parts().forEach(part -> write(out, question, part));
        }
        return out.append("</quiz>\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void write(StringBuilder out, SchoolQuestion question, SchoolQuestion.Part part) {
        boolean isNumber = part instanceof SchoolQuestion.Number;
        out.append("  <question type=\"")
                .append(isNumber ? "numerical" : "multichoice")
                .append("\">\n");
        out.append("    <name><text>")
                .append(Markup.escaped(question.title() + ": " + part.prompt()))
                .append("</text></name>\n");
        out.append("    <questiontext format=\"html\">\n      <text>").append(cdata(body(question, part)));
        out.append("</text>\n");
        if (question.picture().length > 0) {
            out.append("      <file name=\"" + PICTURE + "\" path=\"/\" encoding=\"base64\">")
                    .append(Base64.getEncoder().encodeToString(question.picture()))
                    .append("</file>\n");
        }
        out.append("    </questiontext>\n    <generalfeedback format=\"html\"><text>")
                .append(cdata(Markup.html(question.feedback())))
                .append("</text></generalfeedback>\n    <defaultgrade>")
                .append(number(part.marks()))
                .append("</defaultgrade>\n    <penalty>0</penalty>\n    <hidden>0</hidden>\n    <idnumber>")
                .append(Markup.escaped(question.id() + "-" + part.name().toLowerCase(Locale.ROOT)))
                .append("</idnumber>\n");
        if (part instanceof SchoolQuestion.Number asked) {
            number(out, asked);
        } else if (part instanceof SchoolQuestion.OneOf asked) {
            oneOf(out, asked);
        }
        out.append("  </question>\n");
    }

    private static String body(SchoolQuestion question, SchoolQuestion.Part part) {
        String picture = question.picture().length == 0
                ? ""
                : "<p><img src=\"@@PLUGINFILE@@/" + PICTURE + "\" alt=\"" + Markup.escaped(question.pictureWords())
                        + "\" /></p>\n";
        return Markup.html(question.text()) + picture + "<p><strong>" + Markup.escaped(part.prompt()) + "</strong></p>";
    }

    private static void number(StringBuilder out, SchoolQuestion.Number asked) {
        answer(out, PERCENT, asked.value(), asked.tolerance());
        answer(out, PERCENT / 2, asked.value(), 2 * asked.tolerance());
        out.append("    <units><unit><multiplier>1</multiplier><unit_name>")
                .append(Markup.escaped(asked.unit()))
                .append("</unit_name></unit></units>\n    <unitgradingtype>0</unitgradingtype>\n")
                .append(
                        "    <unitpenalty>0</unitpenalty>\n    <showunits>3</showunits>\n    <unitsleft>0</unitsleft>\n");
    }

    private static void answer(StringBuilder out, double percent, double value, double tolerance) {
        out.append("    <answer fraction=\"")
                .append(number(percent))
                .append("\" format=\"plain_text\"><text>")
                .append(number(value))
                .append("</text><feedback format=\"html\"><text></text></feedback><tolerance>")
                .append(number(tolerance))
                .append("</tolerance></answer>\n");
    }

    private static void oneOf(StringBuilder out, SchoolQuestion.OneOf asked) {
        out.append("    <single>true</single>\n    <shuffleanswers>true</shuffleanswers>\n")
                .append("    <answernumbering>abc</answernumbering>\n");
        for (SchoolQuestion.Answer answer : asked.answers()) {
            out.append("    <answer fraction=\"")
                    .append(fraction(answer.share()))
                    .append("\" format=\"html\"><text>")
                    .append(cdata(Markup.escaped(answer.text())))
                    .append("</text><feedback format=\"html\"><text>")
                    .append(cdata(Markup.escaped(answer.feedback())))
                    .append("</text></feedback></answer>\n");
        }
    }

    /** The system takes certain shares only; thirds are written with five digits. */
    private static String fraction(double share) {
        return share == Math.rint(share)
                ? number(PERCENT * share)
                : String.format(Locale.ROOT, "%.5f", PERCENT * share);
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(value)
                .setScale(3, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String cdata(String html) {
        return "<![CDATA[" + html.replace("]]>", "]]]]><![CDATA[>") + "]]>";
    }
}
