// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.terminal;

import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** Texts for a terminal: Markdown without its signs, in lines that fit. */
final class Prose {

    private static final int LEAST_WIDTH = 30;
    private static final int MOST_WIDTH = 100;

    private final int width;
    private final Quantities quantities;

    Prose(int columns, Quantities quantities) {
        this.quantities = quantities;
        this.width = Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, columns));
    }

    /** Takes the signs of Markdown away and breaks lines. */
    String ofMarkdown(String markdown) {
        TextContentRenderer plain = TextContentRenderer.builder()
                .lineBreakRendering(LineBreakRendering.SEPARATE_BLOCKS)
                .build();
        Node document = Parser.builder().build().parse(quantities.inText(markdown));
        document.accept(new LinesJoined());
        return wrapped(glued(plain.render(document)), "");
    }

    /** No line ends between a number and its unit. */
    private static String glued(String text) {
        return text.replaceAll("(\\d) (?=(?:%|m|km|ft|ns|µs|dB|MHz|GHz|Ω)(?:\\W|$))", "$1\u00a0");
    }

    /** A line end inside a paragraph is a space: the terminal has a width of its own. */
    private static final class LinesJoined extends AbstractVisitor {
        @Override
        public void visit(SoftLineBreak lineBreak) {
            lineBreak.insertBefore(new Text(" "));
            lineBreak.unlink();
        }
    }

    /** Breaks lines at spaces; what is behind a break stands under the first word. */
    String wrapped(String text, String indent) {
        StringBuilder out = new StringBuilder();
        for (String line : text.strip().split("\n", -1)) {
            String hanging = " ".repeat(indent.length() + (line.startsWith("- ") ? 2 : 0));
            List<String> pieces = broken(line, width - hanging.length());
            for (int i = 0; i < pieces.size(); i++) {
                out.append((i == 0 ? indent : hanging) + pieces.get(i)).append('\n');
            }
        }
        return out.toString();
    }

    private static List<String> broken(String line, int room) {
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        for (String word : line.strip().split(" +")) {
            if (piece.length() > 0 && piece.length() + 1 + word.length() > room) {
                pieces.add(piece.toString());
                piece.setLength(0);
            }
            piece.append(piece.length() == 0 ? "" : " ").append(word);
        }
        pieces.add(piece.toString());
        return pieces;
    }
}
