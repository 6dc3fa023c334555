// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** Markdown as the plain text that it says; list items begin with a dot. */
final class PlainText {

    private PlainText() {}

    static String of(String markdown) {
        Node document = Parser.builder()
                .extensions(List.of(TablesExtension.create()))
                .build()
                .parse(markdown);
        return of(document);
    }

    /** A part of a parsed text. */
    static String of(Node document) {
        // A line break within a paragraph is only where the writer's line ended.
        document.accept(new JoinLines());
        String text = TextContentRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .lineBreakRendering(LineBreakRendering.SEPARATE_BLOCKS)
                .build()
                .render(document);
        return text.replaceAll("(?m)^[ ]*[-*] ", "• ");
    }

    private static final class JoinLines extends org.commonmark.node.AbstractVisitor {
        @Override
        public void visit(org.commonmark.node.SoftLineBreak lineBreak) {
            lineBreak.insertAfter(new org.commonmark.node.Text(" "));
            lineBreak.unlink();
        }
    }
}
