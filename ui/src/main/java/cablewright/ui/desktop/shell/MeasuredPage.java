// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.ui.desktop.measured.MeasuredView;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;

/**
 * A measured line as a page: files that are opened or dropped while it is shown are read as measurements.
 *
 * @param measured the line
 */
record MeasuredPage(MeasuredView measured) implements Page.Content {

    @Override
    public Node node() {
        return measured;
    }

    @Override
    public void start() {
        measured.start();
    }

    @Override
    public Node picture() {
        return measured.tracks();
    }

    @Override
    public Optional<Consumer<Path>> files() {
        return Optional.of(measured::open);
    }
}
