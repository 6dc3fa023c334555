// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One question as an item of QTI 3.0: its declarations, its body, how it is marked, and what is shown afterwards, in the order that
 * the information model gives for {@code qti-assessment-item}.
 */
final class QtiItem {

    static final String NAMESPACE = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

    private static final String SCHEMA = "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd";

    private final SchoolQuestion question;
    private final String language;
    private final StringBuilder out = new StringBuilder();

    QtiItem(SchoolQuestion question, String language) {
        this.question = question;
        this.language = language;
    }

    /** Identifiers begin with a letter. */
    static String name(SchoolQuestion question) {
        return "item-" + question.id();
    }

    String xml() {
        out.setLength(0);
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<qti-assessment-item xmlns=\"" + NAMESPACE
                + "\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\"\n    xsi:schemaLocation=\"" + NAMESPACE
                + " " + SCHEMA + "\"\n    identifier=\"" + name(question) + "\" title=\""
                + Markup.escaped(question.title()) + "\" adaptive=\"false\" time-dependent=\"false\" xml:lang=\""
                + language + "\">\n");
        question.parts().forEach(this::declaration);
        double most = question.parts().stream()
                .mapToDouble(SchoolQuestion.Part::marks)
                .sum();
        out.append(
                "  <qti-outcome-declaration identifier=\"SCORE\" cardinality=\"single\" base-type=\"float\""
                        + " normal-maximum=\"" + number(most) + "\">\n"
                        + "    <qti-default-value><qti-value>0</qti-value></qti-default-value>\n"
                        + "  </qti-outcome-declaration>\n"
                        + "  <qti-outcome-declaration identifier=\"FEEDBACK\" cardinality=\"single\" base-type=\"identifier\"/>\n");
        body();
        processing();
        out.append("  <qti-modal-feedback outcome-identifier=\"FEEDBACK\" identifier=\"reasons\" show-hide=\"show\">\n"
                + "    <qti-content-body>\n" + Markup.html(question.feedback())
                + "    </qti-content-body>\n  </qti-modal-feedback>\n");
        return out.append("</qti-assessment-item>\n").toString();
    }

    private void declaration(SchoolQuestion.Part part) {
        boolean isNumber = part instanceof SchoolQuestion.Number;
        out.append("  <qti-response-declaration identifier=\"" + part.name() + "\" cardinality=\"single\" base-type=\""
                + (isNumber ? "float" : "identifier") + "\">\n    <qti-correct-response><qti-value>");
        if (part instanceof SchoolQuestion.Number asked) {
            out.append(number(asked.value())).append("</qti-value></qti-correct-response>\n");
        } else if (part instanceof SchoolQuestion.OneOf asked) {
            out.append(choice(right(asked))).append("</qti-value></qti-correct-response>\n");
            out.append("    <qti-mapping default-value=\"0\">\n");
            for (int i = 0; i < asked.answers().size(); i++) {
                double earned = asked.answers().get(i).share() * asked.marks();
                out.append("      <qti-map-entry map-key=\"" + choice(i) + "\" mapped-value=\"" + number(earned)
                        + "\"/>\n");
            }
            out.append("    </qti-mapping>\n");
        }
        out.append("  </qti-response-declaration>\n");
    }

    private static int right(SchoolQuestion.OneOf asked) {
        int right = 0;
        for (int i = 0; i < asked.answers().size(); i++) {
            right = asked.answers().get(i).share() == 1 ? i : right;
        }
        return right;
    }

    private static String choice(int index) {
        return "choice-" + (index + 1);
    }

    private void body() {
        out.append("  <qti-item-body>\n").append(Markup.html(question.text()));
        if (question.picture().length > 0) {
            out.append("    <p><img src=\"" + question.id() + ".png\" alt=\"" + Markup.escaped(question.pictureWords())
                    + "\"/></p>\n");
        }
        for (SchoolQuestion.Part part : question.parts()) {
            String prompt = Markup.escaped(part.prompt());
            if (part instanceof SchoolQuestion.OneOf asked) {
                out.append("    <qti-choice-interaction response-identifier=\"" + part.name()
                        + "\" shuffle=\"true\" max-choices=\"1\">\n      <qti-prompt>" + prompt + "</qti-prompt>\n");
                for (int i = 0; i < asked.answers().size(); i++) {
                    out.append("      <qti-simple-choice identifier=\"" + choice(i) + "\">"
                            + Markup.escaped(asked.answers().get(i).text()) + "</qti-simple-choice>\n");
                }
                out.append("    </qti-choice-interaction>\n");
            } else {
                out.append("    <p>" + prompt + " <qti-text-entry-interaction response-identifier=\"" + part.name()
                        + "\" expected-length=\"8\"/></p>\n");
            }
        }
        out.append("  </qti-item-body>\n");
    }

    private void processing() {
        out.append("  <qti-response-processing>\n");
        for (SchoolQuestion.Part part : question.parts()) {
            if (part instanceof SchoolQuestion.Number asked) {
                out.append("    <qti-response-condition>\n");
                within("qti-response-if", asked, asked.tolerance(), asked.marks());
                within("qti-response-else-if", asked, 2 * asked.tolerance(), asked.marks() / 2);
                out.append("    </qti-response-condition>\n");
            } else {
                add("    ", "<qti-map-response identifier=\"" + part.name() + "\"/>");
            }
        }
        out.append("    <qti-set-outcome-value identifier=\"FEEDBACK\">"
                + "<qti-base-value base-type=\"identifier\">reasons</qti-base-value></qti-set-outcome-value>\n"
                + "  </qti-response-processing>\n");
    }

    private void within(String element, SchoolQuestion.Number asked, double tolerance, double marks) {
        String plusMinus = number(tolerance) + " " + number(tolerance);
        out.append("      <" + element + ">\n        <qti-equal tolerance-mode=\"absolute\" tolerance=\"" + plusMinus
                + "\"><qti-variable identifier=\"" + asked.name() + "\"/><qti-correct identifier=\"" + asked.name()
                + "\"/></qti-equal>\n");
        add("        ", "<qti-base-value base-type=\"float\">" + number(marks) + "</qti-base-value>");
        out.append("      </" + element + ">\n");
    }

    private void add(String indent, String value) {
        out.append(indent + "<qti-set-outcome-value identifier=\"SCORE\"><qti-sum><qti-variable identifier=\"SCORE\"/>"
                + value + "</qti-sum></qti-set-outcome-value>\n");
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
