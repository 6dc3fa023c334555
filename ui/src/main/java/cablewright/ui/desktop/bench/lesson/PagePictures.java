// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.lesson;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.edit.LessonEdits;
import cablewright.lessons.exercise.LessonPage;
import cablewright.lessons.exercise.Picture;
import cablewright.lessons.file.FileFault;
import cablewright.lessons.text.Texts;
import cablewright.simulator.file.PlainFile;
import cablewright.ui.desktop.bench.form.FieldViewModel;
import cablewright.ui.desktop.bench.form.IndexedRows;
import cablewright.ui.desktop.bench.form.Order;
import cablewright.ui.desktop.bench.form.RowButtons;
import cablewright.ui.desktop.bench.form.TypedField;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** The pictures of a page, each small beside its caption. */
final class PagePictures extends VBox {

    private static final double SMALL_PIXELS = 90;

    private final LessonEditorViewModel model;
    private final int page;
    private final Texts texts;
    private final Label problem = new Label();

    PagePictures(LessonEditorViewModel model, int page) {
        this.model = model;
        this.page = page;
        this.texts = model.texts();
        getStyleClass().add("section-fields");
        problem.setId("page-picture-problem-" + (page + 1));
        problem.setWrapText(true);
        problem.setMinHeight(Region.USE_PREF_SIZE);
        problem.getStyleClass().add("problem");
        tell("");
        Button add = new Button(texts.say("picture.add"));
        add.setId("page-picture-add-" + (page + 1));
        add.setAccessibleText(texts.say("picture.add.name", page + 1));
        add.setOnAction(event -> choose());
        getChildren()
                .addAll(new IndexedRows(model.document(), now -> pictures(now).size(), this::row), problem, add);
    }

    private List<Picture> pictures(BenchDocument now) {
        return PageRow.page(now, page).map(LessonPage::pictures).orElse(List.of());
    }

    private void tell(String sentence) {
        problem.setText(sentence);
        problem.setVisible(!sentence.isEmpty());
        problem.setManaged(!sentence.isEmpty());
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.say("picture.choose"));
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(texts.say("picture.kinds"), "*.png", "*.jpg", "*.jpeg"));
        Optional.ofNullable(chooser.showOpenDialog(getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(this::add);
    }

    /** Takes a picture from a file; where it can't be used, says why. */
    void add(Path file) {
        try {
            if (Files.isRegularFile(file) && Files.size(file) > Picture.MOST_BYTES) {
                tell(texts.say("picture.large", file.getFileName(), Files.size(file), Picture.MOST_BYTES));
                return;
            }
            String name = String.valueOf(file.getFileName()).replaceFirst("\\.[^.]*$", "");
            Picture picture = Picture.of(name, PlainFile.bytes(file, Picture.MOST_BYTES));
            tell(edit(texts.say("picture.step.add"), pictures -> Order.with(pictures, picture))
                    .orElse(""));
        } catch (IOException e) {
            tell(texts.say("picture.unread", file.getFileName(), FileFault.sentence(e)));
        } catch (IllegalArgumentException e) {
            tell(texts.say("picture.unusable", file.getFileName()));
        }
    }

    private Optional<String> edit(String name, UnaryOperator<List<Picture>> edit) {
        return model.stepPage(name, page, it -> LessonEdits.withPictures(it, edit.apply(it.pictures())));
    }

    private Optional<String> caption(int index, String caption) {
        return model.typePage(
                page,
                "picture/" + index,
                it -> LessonEdits.withPictures(
                        it,
                        Order.replaced(
                                it.pictures(),
                                index,
                                new Picture(caption, it.pictures().get(index).data()))));
    }

    private Node row(int index) {
        String id = "page-" + (page + 1) + "-picture";
        TypedField caption = new TypedField(
                id + "-caption-" + (index + 1),
                texts.say("picture.caption", index + 1),
                new FieldViewModel(
                        model.document(),
                        now -> index < pictures(now).size()
                                ? pictures(now).get(index).caption()
                                : "",
                        typed -> caption(index, typed)));
        RowButtons buttons = new RowButtons(
                id,
                "picture.row",
                index + 1,
                texts,
                by -> edit(texts.say("picture.step.move"), all -> Order.moved(all, index, by)),
                () -> edit(texts.say("picture.step.remove"), all -> Order.without(all, index)));
        VBox fields = new VBox(buttons, caption);
        HBox.setHgrow(fields, Priority.ALWAYS);
        HBox row = new HBox(new Small(index), fields);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("item-head");
        return row;
    }

    /** The picture, small; it follows the document. */
    private final class Small extends ImageView {

        private final int index;
        private final ChangeListener<BenchDocument> follow = (o, before, now) -> show(now);
        private Optional<Picture> shown = Optional.empty();

        Small(int index) {
            this.index = index;
            setPreserveRatio(true);
            setFitWidth(SMALL_PIXELS);
            setFitHeight(SMALL_PIXELS);
            setAccessibleRole(AccessibleRole.IMAGE_VIEW);
            show(model.document().now());
            model.document().documentProperty().addListener(new WeakChangeListener<>(follow));
        }

        private void show(BenchDocument now) {
            List<Picture> all = pictures(now);
            Optional<Picture> next = index < all.size() ? Optional.of(all.get(index)) : Optional.empty();
            if (!next.equals(shown)) {
                shown = next;
                setImage(next.map(it -> new Image(
                                new ByteArrayInputStream(it.bytes()), 2 * SMALL_PIXELS, 2 * SMALL_PIXELS, true, true))
                        .orElse(null));
                setAccessibleText(next.map(Picture::caption).orElse(""));
            }
        }
    }
}
