// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.tabs;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.exercise.ExercisePane;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.bench.lesson.LessonPane;
import cablewright.ui.desktop.bench.record.RecordPane;
import cablewright.ui.desktop.bench.sheet.DataSheetPane;
import cablewright.ui.desktop.task.Threads;
import cablewright.ui.words.LengthUnit;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Tab;

/** The editors of record, exercise and lesson, each as a tab. */
public final class EditorTabs {

    private EditorTabs() {}

    /**
     * Makes the tabs.
     *
     * @param document the document on the Bench
     * @param unit the unit of lengths
     * @param threads where to work and where to show
     * @param tryIt opens the exercise as a trainee sees it
     * @param locale the language
     * @return the tabs, in the order in which they are worked through
     */
    public static List<Tab> of(
            DocumentViewModel document,
            ObjectProperty<LengthUnit> unit,
            Threads threads,
            Runnable tryIt,
            Locale locale) {
        Texts texts = EditorTexts.open(locale);
        return List.of(
                tab("record", texts, new RecordPane(document, unit, texts)),
                tab("exercise", texts, new ExercisePane(document, unit, threads, tryIt, texts)),
                tab("lesson", texts, new LessonPane(document, threads, texts)),
                tab("sheet", texts, new DataSheetPane(document, threads, texts)));
    }

    private static Tab tab(String name, Texts texts, Node content) {
        Tab tab = new Tab(texts.say("tab." + name), content);
        tab.setId("tab-" + name);
        tab.setClosable(false);
        return tab;
    }
}
