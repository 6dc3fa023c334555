// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.ui.desktop.shell.Examples;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Moodle XML is held to the published description of the format (Moodle documentation, "Moodle XML format": overall structure,
 * tags common to all question types, multiple choice, numerical) and to the shares of marks that its importer takes. There is no
 * schema of it.
 *
 * <p>QTI is held to the 1EdTech Assessment, Section and Item Information Model 3.0: namespace, order of the parts of
 * an item, declared names, and the meaning of response processing, which a small interpreter here works out for right, near and
 * wrong answers. The published schema is not at hand where this test runs, and the test opens no network, so it is not validated
 * against it.
 */
class SchoolExportTest {

    /** In percent; Moodle, question bank, "grade options": thirds with five digits. */
    private static final Set<String> SHARES = Set.of("0", "100", "50", "33.33333", "66.66667");

    /** Order of children of an item: information model, class AssessmentItem. */
    private static final List<String> ITEM_ORDER = List.of(
            "qti-response-declaration",
            "qti-outcome-declaration",
            "qti-item-body",
            "qti-response-processing",
            "qti-modal-feedback");

    private static final Lesson LESSON = Examples.lesson();
    private static final Words WORDS = Words.in(LengthUnit.METRES, Locale.ROOT);

    private static byte[] moodle;
    private static byte[] qti;

    @BeforeAll
    static void makeThemOnce() {
        moodle = new MoodleQuestions(LESSON, WORDS).bytes();
        qti = new QtiPackage(LESSON, WORDS).bytes();
    }

    private static Document parsed(byte[] xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml));
    }

    private static List<Element> all(Node within, String name) {
        List<Element> found = new ArrayList<>();
        for (Node child = within.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                if (element.getLocalName().equals(name)) {
                    found.add(element);
                }
                found.addAll(all(element, name));
            }
        }
        return found;
    }

    private static List<Element> children(Element of) {
        List<Element> found = new ArrayList<>();
        for (Node child = of.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                found.add(element);
            }
        }
        return found;
    }

    private static String text(Element within, String... path) {
        Element at = within;
        for (String name : path) {
            at = children(at).stream()
                    .filter(child -> child.getLocalName().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no " + name));
        }
        return at.getTextContent();
    }

    private static Map<String, byte[]> unzipped(byte[] zip) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    @Test
    void moodleTakesTheQuestions() throws Exception {
        Element quiz = parsed(moodle).getDocumentElement();
        assertEquals("quiz", quiz.getTagName());
        List<Element> questions = children(quiz);
        assertEquals("category", questions.get(0).getAttribute("type"));
        assertTrue(text(questions.get(0), "category", "text").startsWith("$course$/"));
        int numbers = 0;
        for (Element question : questions.subList(1, questions.size())) {
            String type = question.getAttribute("type");
            assertFalse(text(question, "name", "text").isBlank());
            assertFalse(text(question, "questiontext", "text").isBlank());
            assertTrue(Double.parseDouble(text(question, "defaultgrade")) > 0);
            List<Element> answers = all(question, "answer");
            int right = 0;
            for (Element answer : answers) {
                assertTrue(SHARES.contains(answer.getAttribute("fraction")), answer.getAttribute("fraction"));
                right += answer.getAttribute("fraction").equals("100") ? 1 : 0;
            }
            assertEquals(1, right, text(question, "name", "text"));
            if (type.equals("numerical")) {
                numbers++;
                for (Element answer : answers) {
                    assertTrue(Double.parseDouble(text(answer, "text")) > 0);
                    assertTrue(Double.parseDouble(text(answer, "tolerance")) >= 0.3);
                }
            } else {
                assertEquals("multichoice", type);
                assertEquals("true", text(question, "single"));
            }
            for (Element file : all(question, "file")) {
                byte[] png = Base64.getDecoder().decode(file.getTextContent());
                assertNotNull(ImageIO.read(new ByteArrayInputStream(png)));
                assertTrue(
                        text(question, "questiontext", "text").contains("@@PLUGINFILE@@/" + file.getAttribute("name")));
            }
        }
        assertTrue(numbers >= 2, "places are asked as numbers");
    }

    @Test
    void thePinchIsAskedWhereItIs() throws Exception {
        Element quiz = parsed(moodle).getDocumentElement();
        assertTrue(isAsked(quiz, 84.1) || isAsked(quiz, 133 - 84.1));
    }

    /** From either end of the line of 133 m; a place may reach a little farther, to where the trace shows the edge. */
    private static boolean isAsked(Element quiz, double place) {
        return all(quiz, "answer").stream()
                .filter(answer -> !all(answer, "tolerance").isEmpty())
                .anyMatch(answer -> Math.abs(Double.parseDouble(text(answer, "text")) - place)
                        <= Double.parseDouble(text(answer, "tolerance")));
    }

    @Test
    void feetAreAskedInFeet() throws Exception {
        Words feet = Words.in(LengthUnit.FEET, Locale.ROOT);
        Element quiz = parsed(new MoodleQuestions(LESSON, feet).bytes()).getDocumentElement();
        assertTrue(all(quiz, "unit_name").stream()
                .allMatch(unit -> unit.getTextContent().equals(LengthUnit.FEET.symbol())));
        assertTrue(isAsked(quiz, 84.1 / 0.3048) || isAsked(quiz, (133 - 84.1) / 0.3048));
    }

    @Test
    void thePackageNamesEachOfItsFilesOnce() throws Exception {
        Map<String, byte[]> files = unzipped(qti);
        Document manifest = parsed(files.get("imsmanifest.xml"));
        Set<String> named = new HashSet<>();
        for (Element file : all(manifest.getDocumentElement(), "file")) {
            assertTrue(named.add(file.getAttribute("href")), file.getAttribute("href"));
        }
        named.add("imsmanifest.xml");
        assertEquals(files.keySet(), new java.util.TreeSet<>(named));
        Set<String> resources = new HashSet<>();
        all(manifest.getDocumentElement(), "resource").forEach(one -> resources.add(one.getAttribute("identifier")));
        all(manifest.getDocumentElement(), "dependency")
                .forEach(one -> assertTrue(resources.contains(one.getAttribute("identifierref"))));
        for (Element item : all(parsed(files.get("test.xml")).getDocumentElement(), "qti-assessment-item-ref")) {
            assertTrue(files.containsKey(item.getAttribute("href")));
        }
    }

    @Test
    void itemsAreBuiltAsTheInformationModelSays() throws Exception {
        Map<String, byte[]> files = unzipped(qti);
        int items = 0;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (!file.getKey().startsWith("items/") || !file.getKey().endsWith(".xml")) {
                continue;
            }
            items++;
            Element item = parsed(file.getValue()).getDocumentElement();
            assertEquals("http://www.imsglobal.org/xsd/imsqtiasi_v3p0", item.getNamespaceURI());
            int last = 0;
            for (Element child : children(item)) {
                int place = ITEM_ORDER.indexOf(child.getLocalName());
                assertTrue(place >= last, child.getLocalName());
                last = place;
            }
            Set<String> declared = new HashSet<>();
            all(item, "qti-response-declaration").forEach(one -> declared.add(one.getAttribute("identifier")));
            Set<String> asked = new HashSet<>();
            for (String interaction : List.of("qti-choice-interaction", "qti-text-entry-interaction")) {
                all(item, interaction).forEach(one -> asked.add(one.getAttribute("response-identifier")));
            }
            assertEquals(declared, asked);
            for (Element image : all(item, "img")) {
                assertNotNull(ImageIO.read(new ByteArrayInputStream(files.get("items/" + image.getAttribute("src")))));
                assertFalse(image.getAttribute("alt").isBlank());
            }
        }
        assertTrue(items >= 3, "items: " + items);
    }

    @Test
    void responseProcessingGivesTheMarks() throws Exception {
        for (Map.Entry<String, byte[]> file : unzipped(qti).entrySet()) {
            if (!file.getKey().startsWith("items/") || !file.getKey().endsWith(".xml")) {
                continue;
            }
            Element item = parsed(file.getValue()).getDocumentElement();
            Map<String, String> right = new HashMap<>();
            for (Element declaration : all(item, "qti-response-declaration")) {
                right.put(
                        declaration.getAttribute("identifier"), text(declaration, "qti-correct-response", "qti-value"));
            }
            double most = Double.parseDouble(
                    all(item, "qti-outcome-declaration").get(0).getAttribute("normal-maximum"));
            assertEquals(10, most, 1e-9, file.getKey());
            assertEquals(most, score(item, right, 0), 1e-9);
            assertEquals(0, score(item, Map.of(), 0), 1e-9);
            boolean hasPlace = right.keySet().stream().anyMatch(name -> name.startsWith("PLACE"));
            if (hasPlace) {
                assertEquals(most, score(item, right, 0.9), 1e-9);
                assertEquals(most - 2, score(item, right, 1.5), 1e-9);
                assertEquals(most - 4, score(item, right, 2.5), 1e-9);
            }
        }
    }

    /** Works response processing out, with every place off by so many tolerances. */
    private static double score(Element item, Map<String, String> answers, double off) {
        double score = 0;
        for (Element rule : children(all(item, "qti-response-processing").get(0))) {
            if (rule.getLocalName().equals("qti-response-condition")) {
                double first = 0;
                for (Element branch : children(rule)) {
                    Element equal = all(branch, "qti-equal").get(0);
                    assertEquals("absolute", equal.getAttribute("tolerance-mode"));
                    double tolerance =
                            Double.parseDouble(equal.getAttribute("tolerance").split(" ")[0]);
                    first = first == 0 ? tolerance : first;
                    String name = all(equal, "qti-correct").get(0).getAttribute("identifier");
                    if (answers.containsKey(name) && off * first <= tolerance) {
                        score += Double.parseDouble(
                                all(branch, "qti-base-value").get(0).getTextContent());
                        break;
                    }
                }
            } else {
                for (Element mapped : all(rule, "qti-map-response")) {
                    String name = mapped.getAttribute("identifier");
                    score += all(item, "qti-response-declaration").stream()
                            .filter(one -> one.getAttribute("identifier").equals(name))
                            .flatMap(one -> all(one, "qti-map-entry").stream())
                            .filter(entry -> entry.getAttribute("map-key").equals(answers.get(name)))
                            .mapToDouble(entry -> Double.parseDouble(entry.getAttribute("mapped-value")))
                            .sum();
                }
            }
        }
        return score;
    }

    @Test
    void theTextGivesNothingAway() {
        Exercise exercise = LESSON.exercises().get(0);
        assertTrue(exercise.cable().events().size() > 1);
        for (SchoolQuestion question : new SchoolQuestions(WORDS).of(LESSON)) {
            assertFalse(question.text().contains(exercise.explanation()));
        }
    }
}
