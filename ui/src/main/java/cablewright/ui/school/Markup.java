// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.school;

import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** Markdown as XHTML, with nothing in it that a file could bring along: HTML and addresses are shown as text. */
final class Markup {

    private static final List<TablesExtension> TABLES = List.of((TablesExtension) TablesExtension.create());

    private Markup() {}

    static String html(String markdown) {
        return HtmlRenderer.builder()
                .extensions(TABLES)
                .escapeHtml(true)
                .sanitizeUrls(true)
                .build()
                .render(Parser.builder().extensions(TABLES).build().parse(markdown))
                .replace(" align=\"left\"", "")
                .replace(" align=\"right\"", "")
                .replace(" align=\"center\"", "");
    }

    /** Text between tags or in an attribute. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
