// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench;

import cablewright.ui.desktop.bench.model.TextClipboard;
import java.util.Optional;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** The clipboard of the system. To be used on the screen's thread. */
public final class SystemClipboard implements TextClipboard {

    /** Uses the system's clipboard. */
    public SystemClipboard() {
        // It is asked for at each use.
    }

    @Override
    public void put(String text) {
        ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }

    @Override
    public Optional<String> get() {
        return Optional.ofNullable(Clipboard.getSystemClipboard().getString());
    }
}
