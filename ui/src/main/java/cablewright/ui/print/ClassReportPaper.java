// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.exam.result.ClassResult;
import cablewright.lessons.exam.result.ItemAnalysis;
import cablewright.lessons.exam.result.PersonResult;
import cablewright.lessons.exam.result.Resemblance;
import cablewright.lessons.exam.result.SetAside;
import cablewright.lessons.text.Texts;
import cablewright.ui.words.FindingWords;
import cablewright.ui.words.Quantities;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;

/** A marked class on paper: marks, what was set aside, how each line did, resemblances, and what was taken for what. */
public final class ClassReportPaper {

    private final ClassResult result;
    private final PaperSize paper;
    private final Words words;
    private final Texts texts;

    /**
     * Makes paper of a marked class.
     *
     * @param result the class
     * @param paper the size of the paper
     * @param words the words, in the unit of length in which the paper is to be read
     */
    public ClassReportPaper(ClassResult result, PaperSize paper, Words words) {
        this.result = result;
        this.paper = paper;
        this.words = words;
        this.texts = words.texts().sibling(PersonReport.BUNDLE);
    }

    private String say(String key, Object... arguments) {
        return texts.say(key, arguments);
    }

    /**
     * Makes the pages.
     *
     * @return the class report, and the class book of these attempts behind it
     */
    public Printout pages() {
        PageFlow flow = new PageFlow(paper);
        long passed = result.people().stream()
                .filter(person -> person.total().passed())
                .count();
        flow.text(say("class.figures", result.people().size(), passed), PageFlow.INK);
        people(flow);
        setAside(flow);
        items(flow);
        resemblances(flow);
        String title = say("class.title", result.title());
        Texts pages = words.texts().sibling("cablewright.ui.print.print");
        Printout report =
                new Printout(title, paper, flow.pages(title, say("foot"), (page, of) -> pages.say("page", page, of)));
        return report.then(new ClassBookPaper(result.summary(), result.title(), paper, words).pages());
    }

    private void people(PageFlow flow) {
        TableBlock table = new TableBlock(flow, 0.34, 0.14, 0.12, 0.14, 0.26);
        table.head(List.of(
                say("class.name"), say("class.marks"), say("class.share"), say("class.passed"), say("class.receipt")));
        for (PersonResult person : result.people()) {
            table.row(List.of(
                    person.name(),
                    FindingWords.marks(person.total().marks()) + " / "
                            + FindingWords.marks(person.total().maximum()),
                    percent(person.fraction()),
                    say(person.total().passed() ? "yes" : "no"),
                    person.receipt()));
        }
    }

    private static String percent(double share) {
        return Quantities.number(100 * share, 0) + "\u00a0%";
    }

    private void setAside(PageFlow flow) {
        if (result.setAside().isEmpty()) {
            return;
        }
        flow.heading(say("class.aside"));
        for (SetAside one : result.setAside()) {
            flow.text("• " + sentence(texts, one), PageFlow.INK);
        }
    }

    /**
     * Says why a file was set aside.
     *
     * @param texts sentences of this paper's bundle
     * @param one the file
     * @return one sentence that begins with the file's name
     */
    private static String sentence(Texts texts, SetAside one) {
        String reason = texts.say(
                "aside." + one.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return one.file() + ": " + reason + (one.detail().isEmpty() ? "" : " (" + one.detail() + ")");
    }

    /**
     * Says of each file that was set aside why.
     *
     * @return one sentence for each
     */
    public List<String> setAside() {
        return result.setAside().stream().map(one -> sentence(texts, one)).toList();
    }

    private void items(PageFlow flow) {
        flow.heading(say("class.items"));
        flow.text(say("class.items.read"), PageFlow.QUIET);
        TableBlock table = new TableBlock(flow, 0.46, 0.16, 0.18, 0.2);
        table.head(List.of(
                say("class.item"), say("class.answered"), say("class.difficulty"), say("class.discrimination")));
        for (ItemAnalysis item : result.items()) {
            table.row(List.of(
                    item.title(),
                    String.valueOf(item.answered()),
                    percent(item.difficulty()),
                    item.discrimination().isPresent()
                            ? Quantities.number(item.discrimination().getAsDouble(), 2)
                            : say("class.unknown")));
        }
    }

    private void resemblances(PageFlow flow) {
        if (result.resemblances().isEmpty()) {
            return;
        }
        flow.heading(say("class.alike"));
        for (Resemblance pair : result.resemblances()) {
            flow.text(
                    "• "
                            + say(
                                    "class.pair",
                                    pair.first(),
                                    pair.second(),
                                    pair.shared(),
                                    Quantities.number(pair.expected(), 1)),
                    PageFlow.INK);
        }
        flow.text(say("class.alike.read"), PageFlow.QUIET);
    }
}
