// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A brief in two parts: what happened, which may scroll, and the task, which may not. The task is the last paragraph that is
 * not set in italics as a whole, as a note is.
 *
 * @param story all but the task, as Markdown; empty for a brief of one paragraph
 * @param task the task, as Markdown
 */
record BriefParts(String story, String task) {

    private static final Pattern BETWEEN = Pattern.compile("\\R\\s*\\R");
    private static final Pattern NOTE = Pattern.compile("\\*[^*].*[^*]\\*", Pattern.DOTALL);

    static BriefParts of(String brief) {
        List<String> paragraphs = new ArrayList<>(List.of(BETWEEN.split(brief.strip())));
        int task = paragraphs.size() - 1;
        while (task > 0 && NOTE.matcher(paragraphs.get(task).strip()).matches()) {
            task--;
        }
        String last = paragraphs.remove(task);
        return new BriefParts(String.join("\n\n", paragraphs), last);
    }
}
