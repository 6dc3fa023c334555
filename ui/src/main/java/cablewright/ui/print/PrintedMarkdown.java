// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.print;

import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;

/** Sets a text in Markdown: paragraphs and lists as plain text, headings and tables as such. */
final class PrintedMarkdown {

    private final PageFlow flow;
    private final Quantities quantities;

    PrintedMarkdown(PageFlow flow, Quantities quantities) {
        this.flow = flow;
        this.quantities = quantities;
    }

    void set(String markdown) {
        Node document = Parser.builder()
                .extensions(List.of(TablesExtension.create()))
                .build()
                .parse(quantities.inText(markdown));
        for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
            if (block instanceof CustomBlock table) {
                table(table);
            } else if (block instanceof Heading) {
                flow.heading(PlainText.of(block));
            } else {
                flow.text(PlainText.of(block), PageFlow.INK);
                flow.gap(4);
            }
        }
    }

    private void table(CustomBlock table) {
        List<List<String>> rows = new ArrayList<>();
        table.accept(new AbstractVisitor() {
            @Override
            public void visit(CustomNode node) {
                if (node instanceof TableRow) {
                    List<String> cells = new ArrayList<>();
                    for (Node cell = node.getFirstChild(); cell != null; cell = cell.getNext()) {
                        cells.add(PlainText.of(cell).replaceAll("\\|\\s*$", "").strip());
                    }
                    rows.add(cells);
                } else {
                    visitChildren(node);
                }
            }
        });
        int columns = rows.get(0).size();
        double[] shares = Collections.nCopies(columns, 1.0 / columns).stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        TableBlock block = new TableBlock(flow, shares);
        block.head(rows.get(0));
        rows.subList(1, rows.size()).forEach(block::row);
        flow.gap(6);
    }
}
