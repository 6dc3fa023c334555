// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.key;

import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Columns;
import cablewright.ui.desktop.exam.form.FileWish;
import cablewright.ui.desktop.exam.form.Form;
import cablewright.ui.print.PaperSize;
import cablewright.ui.words.Words;
import java.io.File;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** An examiner's key on the screen: the key itself at the left, its backups at the right. */
public final class KeyView extends VBox {

    private final KeyViewModel model;
    private final Texts texts;
    private final Words words;
    private final ComboBox<PaperSize> size = new ComboBox<>();

    /**
     * Shows a key.
     *
     * @param model the key
     * @param texts sentences of these pages
     * @param words the words
     */
    public KeyView(KeyViewModel model, Texts texts, Words words) {
        this.model = model;
        this.texts = texts;
        this.words = words;
        getStyleClass().add("exam-page");
        VBox left = new VBox(own(), lost());
        VBox right = new VBox(backup(), paper());
        getChildren().add(Columns.alike(left, right));
    }

    private Node own() {
        Form form = new Form("keys.own", texts);
        form.words("what").file("file", "key-file", model.keyFileProperty(), FileWish.SAVE);
        Button open = form.button("open", "key-open", model::open);
        open.getStyleClass().add("accent");
        form.buttons(open, form.button("make", "key-make", model::make)).enter(open);
        form.message("key-message", model.jobs().saidProperty());
        TextField shown = new TextField();
        shown.setId("key-public");
        shown.setEditable(false);
        shown.getStyleClass().add("exam-code");
        shown.setPromptText(texts.say("keys.own.none"));
        Button copy = form.button("copy", "key-copy", () -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(shown.getText());
            Clipboard.getSystemClipboard().setContent(content);
            model.jobs().news("keys.copied");
        });
        ReadOnlyObjectProperty<Optional<ExaminerKey>> key = model.keyProperty();
        shown.textProperty()
                .bind(key.map(open2 -> open2.map(ExaminerKey::publicKey).orElse("")));
        copy.disableProperty().bind(key.map(Optional::isEmpty));
        HBox.setHgrow(shown, Priority.ALWAYS);
        HBox pair = new HBox(shown, copy);
        pair.getStyleClass().add("exam-pair");
        shown.setAccessibleText(texts.say("keys.own.public"));
        return form.row("public", pair).words("public.what");
    }

    private Node backup() {
        Form form = new Form("keys.backup", texts);
        form.words("what")
                .secret("passphrase", "key-passphrase", model.passphraseProperty())
                .secret("again", "key-passphrase-again", model.repeatedProperty())
                .file("file", "key-backup-file", model.backupFileProperty(), FileWish.SAVE);
        Button save = form.button("save", "key-backup", model::backUp);
        save.disableProperty().bind(model.keyProperty().map(Optional::isEmpty));
        return form.buttons(save);
    }

    private Node paper() {
        Form form = new Form("keys.paper", texts);
        form.words("what");
        size.setId("key-paper-size");
        size.setAccessibleText(texts.say("keys.paper.size"));
        size.getItems().setAll(PaperSize.values());
        size.setValue(PaperSize.A4);
        size.setMinWidth(Region.USE_PREF_SIZE);
        Button print = form.button("print", "key-print", () -> model.print(size.getValue(), words));
        Button pdf = form.button("pdf", "key-pdf", this::savePdf);
        print.disableProperty().bind(model.keyProperty().map(Optional::isEmpty));
        pdf.disableProperty().bind(model.keyProperty().map(Optional::isEmpty));
        return form.buttons(print, pdf, size);
    }

    private void savePdf() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.say("keys.paper.pdf"));
        chooser.setInitialFileName("key.pdf");
        Optional.ofNullable(chooser.showSaveDialog(getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(file -> model.savePaper(file, size.getValue(), words));
    }

    private Node lost() {
        Form form = new Form("keys.lost", texts);
        form.words("what")
                .file("backup", "key-lost-file", model.lostProperty(), FileWish.OPEN)
                .secret("passphrase", "key-lost-passphrase", model.lostPassphraseProperty());
        Button restore = form.button("restore", "key-restore", model::restore);
        Button typed = form.button("take", "key-take-typed", model::takeTyped);
        return form.buttons(restore)
                .secret("typed", "key-typed", model.typedProperty())
                .buttons(typed);
    }

    /** Puts the focus where work begins. */
    public void start() {
        lookup("#key-file").requestFocus();
    }
}
