// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.ui.desktop.bench.BenchView;
import cablewright.ui.desktop.bench.trial.TrialStack;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;

/**
 * The Bench as a page: files that are opened or dropped while it is shown go onto it.
 *
 * @param bench the Bench
 * @param stack the Bench, and over it the exercise while it is tried
 */
record BenchPage(BenchView bench, TrialStack stack) implements Page.Content {

    @Override
    public Node node() {
        return stack;
    }

    @Override
    public void start() {
        stack.start(bench::start);
    }

    @Override
    public Node picture() {
        return stack.picture(bench.tracks());
    }

    @Override
    public Optional<Consumer<Path>> files() {
        return Optional.of(bench::open);
    }
}
