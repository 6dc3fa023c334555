// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.exam.sitting;

import cablewright.lessons.exam.sitting.HandedIn;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.exam.form.Form;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.VBox;

/** What is left once answers are handed in: the file to give away, and the receipt to keep. */
final class ReceiptCard extends VBox {

    ReceiptCard(HandedIn handedIn, Runnable leave, Texts texts) {
        getStyleClass().add("exam-page");
        setAlignment(Pos.TOP_CENTER);
        Form form = new Form("receipt", texts);
        form.getStyleClass().add("exam-sheet");
        TextField file = shown(handedIn.file().toString(), "receipt-file");
        TextField code = shown(handedIn.receipt(), "receipt-code");
        code.getStyleClass().add("receipt-code");
        Button copy = form.button("copy", "receipt-copy", () -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(handedIn.receipt());
            Clipboard.getSystemClipboard().setContent(content);
        });
        form.words("file.what").row("file", file).words("code.what").row("code", code);
        form.buttons(copy, form.button("leave", "receipt-leave", leave));
        getChildren().add(form);
    }

    private static TextField shown(String text, String id) {
        TextField field = new TextField(text);
        field.setEditable(false);
        field.setId(id);
        return field;
    }
}
