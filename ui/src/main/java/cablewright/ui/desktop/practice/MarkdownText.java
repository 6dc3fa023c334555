// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Quantities;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.parser.Parser;

/** Shows Markdown as plain text flows: paragraphs, headings, lists, tables, emphasis. Links and pictures show their text. */
public final class MarkdownText extends VBox {

    /**
     * Shows a text, its lengths in metres.
     *
     * @param markdown the text
     */
    public MarkdownText(String markdown) {
        this(markdown, new SimpleObjectProperty<>(LengthUnit.METRES));
    }

    /**
     * Shows a text, its lengths in a unit that can change.
     *
     * @param markdown the text
     * @param unit the unit of lengths
     */
    public MarkdownText(String markdown, ObservableValue<LengthUnit> unit) {
        getStyleClass().add("markdown");
        setAccessibleRole(AccessibleRole.TEXT);
        show(new Quantities(unit.getValue()).inText(markdown));
        if (!new Quantities(LengthUnit.METRES)
                .inText(markdown)
                .equals(new Quantities(LengthUnit.FEET).inText(markdown))) {
            unit.addListener((o, before, now) -> show(new Quantities(now).inText(markdown)));
        }
    }

    private void show(String markdown) {
        getChildren().clear();
        Node document = Parser.builder()
                .extensions(List.of(TablesExtension.create()))
                .build()
                .parse(markdown);
        Blocks blocks = new Blocks(this);
        document.accept(blocks);
        setAccessibleText(blocks.spoken.stream().collect(Collectors.joining("\n")));
    }

    /** Makes a node for each block. */
    private static final class Blocks extends AbstractVisitor {
        private final List<String> spoken = new ArrayList<>();
        private VBox target;

        Blocks(VBox target) {
            this.target = target;
        }

        private TextFlow flow(Node block, String styleClass) {
            Inlines inlines = new Inlines();
            inlines.visitAll(block);
            TextFlow flow = new TextFlow(inlines.texts.toArray(new Text[0]));
            flow.getStyleClass().add(styleClass);
            flow.setAccessibleText(inlines.plain());
            spoken.add(inlines.plain());
            return flow;
        }

        @Override
        public void visit(Paragraph paragraph) {
            target.getChildren().add(flow(paragraph, "markdown-paragraph"));
        }

        @Override
        public void visit(Heading heading) {
            target.getChildren().add(flow(heading, "markdown-heading"));
        }

        @Override
        public void visit(FencedCodeBlock block) {
            code(block.getLiteral());
        }

        @Override
        public void visit(IndentedCodeBlock block) {
            code(block.getLiteral());
        }

        private void code(String literal) {
            Label label = new Label(literal.stripTrailing());
            label.getStyleClass().add("markdown-code");
            target.getChildren().add(label);
            spoken.add(literal);
        }

        @Override
        public void visit(BulletList list) {
            items(list, -1);
        }

        @Override
        public void visit(OrderedList list) {
            items(list, list.getMarkerStartNumber() == null ? 1 : list.getMarkerStartNumber());
        }

        private void items(Node list, int first) {
            VBox outer = target;
            int number = first;
            for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
                VBox content = new VBox();
                content.getStyleClass().add("markdown");
                HBox.setHgrow(content, Priority.ALWAYS);
                Label bullet = new Label(first < 0 ? "•" : number + ".");
                bullet.setMinWidth(Region.USE_PREF_SIZE);
                HBox row = new HBox(6, bullet, content);
                row.setPadding(new Insets(0, 0, 0, 6));
                target = content;
                visitChildren((ListItem) item);
                target = outer;
                outer.getChildren().add(row);
                number++;
            }
        }

        @Override
        public void visit(CustomBlock table) {
            GridPane grid = new GridPane();
            grid.getStyleClass().add("markdown-table");
            List<TableRow> rows = new ArrayList<>();
            table.accept(new AbstractVisitor() {
                @Override
                public void visit(CustomNode node) {
                    if (node instanceof TableRow row) {
                        rows.add(row);
                    } else {
                        visitChildren(node);
                    }
                }

                @Override
                public void visit(CustomBlock block) {
                    visitChildren(block);
                }
            });
            for (int r = 0; r < rows.size(); r++) {
                int c = 0;
                for (Node cell = rows.get(r).getFirstChild(); cell != null; cell = cell.getNext()) {
                    boolean head = cell instanceof TableCell tc && tc.isHeader();
                    grid.add(flow(cell, head ? "markdown-heading" : "markdown-paragraph"), c++, r);
                }
            }
            target.getChildren().add(grid);
        }
    }

    /** Makes a text for each run of one style. */
    private static final class Inlines extends AbstractVisitor {
        private final List<Text> texts = new ArrayList<>();
        private boolean strong;
        private boolean emphasis;

        void visitAll(Node block) {
            visitChildren(block);
        }

        String plain() {
            return texts.stream().map(Text::getText).collect(Collectors.joining());
        }

        private void add(String content, String... styleClasses) {
            Text text = new Text(content);
            text.getStyleClass().add("markdown-text");
            text.getStyleClass().addAll(styleClasses);
            if (strong) {
                text.getStyleClass().add("markdown-strong");
            }
            if (emphasis) {
                text.getStyleClass().add("markdown-emphasis");
            }
            texts.add(text);
        }

        @Override
        public void visit(org.commonmark.node.Text text) {
            add(text.getLiteral());
        }

        @Override
        public void visit(Code code) {
            add(code.getLiteral(), "markdown-code-text");
        }

        @Override
        public void visit(SoftLineBreak lineBreak) {
            add(" ");
        }

        @Override
        public void visit(HardLineBreak lineBreak) {
            add("\n");
        }

        @Override
        public void visit(StrongEmphasis node) {
            boolean before = strong;
            strong = true;
            visitChildren(node);
            strong = before;
        }

        @Override
        public void visit(Emphasis node) {
            boolean before = emphasis;
            emphasis = true;
            visitChildren(node);
            emphasis = before;
        }
    }
}
