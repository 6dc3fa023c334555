// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.lesson;

import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.EditorPane;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.IndexedRows;
import cablewright.ui.desktop.bench.form.MarkdownField;
import cablewright.ui.desktop.bench.form.NumberEntry;
import cablewright.ui.desktop.bench.form.Section;
import cablewright.ui.desktop.bench.form.TypedField;
import cablewright.ui.desktop.bench.lesson.LessonEditorViewModel.LessonTexts;
import cablewright.ui.desktop.task.Threads;
import java.nio.file.Path;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The editor of the lesson on the Bench. */
public final class LessonPane extends EditorPane {

    private static final NumberEntry PERCENT = NumberEntry.between("%", 0.01, 0, 1, 1);

    private final Texts texts;
    private final LessonEditorViewModel model;
    private final IndexedRows rows;

    /**
     * Makes the editor.
     *
     * @param document the document on the Bench
     * @param threads where to examine the lesson
     * @param texts the sentences of the editors
     */
    public LessonPane(DocumentViewModel document, Threads threads, Texts texts) {
        super("lesson-editor", texts.say("lesson.name"));
        this.texts = texts;
        this.model = new LessonEditorViewModel(document, texts);
        this.rows = new IndexedRows(document, now -> now.lesson().pages().size(), number -> new PageRow(model, number));
        add(
                new Section("section-order", texts.say("section.order"), true, new ExerciseOrder(model)),
                new Section("section-pages", texts.say("section.pages"), false, pages()),
                new Section("section-texts", texts.say("section.texts"), true, texts()),
                new Section(
                        "section-handout",
                        texts.say("section.handout"),
                        true,
                        new HandOutList(new HandOutViewModel(document, threads, texts), texts)));
    }

    /**
     * Takes a picture for a page from a file; where it can't be used, the page says why.
     *
     * @param page the page's number, from 0
     * @param file the file
     */
    public void addPicture(int page, Path file) {
        rows.row(page).map(PageRow.class::cast).ifPresent(row -> row.addPicture(file));
    }

    private VBox texts() {
        VBox fields = new VBox(
                field(
                        "title",
                        Lesson::title,
                        (it, text) -> new LessonTexts(it.id(), text, it.introduction(), it.worldNote(), it.passMark())),
                field(
                        "id",
                        Lesson::id,
                        (it, text) ->
                                new LessonTexts(text, it.title(), it.introduction(), it.worldNote(), it.passMark())),
                new MarkdownField(
                        "lesson-introduction",
                        texts.say("lesson.introduction"),
                        new FieldViewModel(
                                model.document(),
                                now -> now.lesson().introduction(),
                                typed -> model.write(
                                        "introduction",
                                        it -> new LessonTexts(
                                                it.id(), it.title(), typed, it.worldNote(), it.passMark()))),
                        texts),
                field(
                        "world",
                        Lesson::worldNote,
                        (it, text) -> new LessonTexts(it.id(), it.title(), it.introduction(), text, it.passMark())),
                passMark());
        fields.getStyleClass().add("section-fields");
        return fields;
    }

    private TypedField field(
            String name, Function<Lesson, String> shown, BiFunction<LessonTexts, String, LessonTexts> with) {
        return new TypedField(
                "lesson-" + name,
                texts.say("lesson." + name),
                new FieldViewModel(
                        model.document(),
                        now -> shown.apply(now.lesson()),
                        typed -> model.write(name, it -> with.apply(it, typed))));
    }

    private TypedField passMark() {
        FieldViewModel field = new FieldViewModel(
                model.document(),
                now -> PERCENT.show(now.lesson().passMarkFraction()),
                typed -> PERCENT.take(
                        typed,
                        texts,
                        share -> model.write(
                                "passMark",
                                it -> new LessonTexts(it.id(), it.title(), it.introduction(), it.worldNote(), share))));
        return new TypedField("lesson-pass-mark", texts.say("lesson.passMark"), field)
                .narrow(6)
                .unit("%");
    }

    private VBox pages() {
        Label what = new Label(texts.say("page.what"));
        what.setWrapText(true);
        what.setMinHeight(Region.USE_PREF_SIZE);
        what.getStyleClass().add("quiet");
        Button add = new Button(texts.say("page.add"));
        add.setId("page-add");
        add.setAccessibleText(texts.say("page.add.name"));
        add.setOnAction(event -> model.addPage());
        VBox pages = new VBox(what, rows, add);
        pages.getStyleClass().add("section-fields");
        return pages;
    }
}
