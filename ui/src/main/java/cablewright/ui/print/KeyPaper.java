// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.text.Texts;
import cablewright.ui.words.Words;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** An examiner's secret key on paper, to be locked away and typed back when every file is lost. */
public final class KeyPaper {

    private static final int GROUP = 6;
    private static final int GROUPS_A_LINE = 5;
    private static final double LETTER_SIZE = 16;
    private static final double COLUMN_WIDTH = 100;

    private final ExaminerKey key;
    private final Instant now;
    private final PaperSize paper;
    private final Texts texts;
    private final Texts pages;

    /**
     * Makes paper of a key.
     *
     * @param key the key
     * @param now when the page is made
     * @param paper the size of the paper
     * @param words the words
     */
    public KeyPaper(ExaminerKey key, Instant now, PaperSize paper, Words words) {
        this.key = key;
        this.now = now;
        this.paper = paper;
        this.texts = words.texts().sibling(PersonReport.BUNDLE);
        this.pages = words.texts().sibling("cablewright.ui.print.print");
    }

    /**
     * Makes the page: the key in groups of six letters, what it is, and how it is typed back.
     *
     * @return one page
     */
    public Printout pages() {
        PageFlow flow = new PageFlow(paper);
        flow.text(texts.say("key.what"), PageFlow.INK);
        flow.gap(14);
        for (List<String> line : lines(key.secret())) {
            flow.columns(line, LETTER_SIZE, COLUMN_WIDTH);
            flow.gap(6);
        }
        flow.gap(10);
        flow.text(texts.say("key.back"), PageFlow.INK);
        flow.gap(10);
        flow.text(texts.say("key.public", key.publicKey()), PageFlow.QUIET);
        flow.text(texts.say("key.made", now.toString().substring(0, 10)), PageFlow.QUIET);
        String title = texts.say("key.title");
        return new Printout(
                title, paper, flow.pages(title, texts.say("foot"), (page, of) -> pages.say("page", page, of)));
    }

    private static List<List<String>> lines(String secret) {
        List<List<String>> lines = new ArrayList<>();
        for (int from = 0; from < secret.length(); from += GROUP) {
            if (from % (GROUP * GROUPS_A_LINE) == 0) {
                lines.add(new ArrayList<>());
            }
            lines.get(lines.size() - 1).add(secret.substring(from, Math.min(secret.length(), from + GROUP)));
        }
        return lines;
    }
}
