package cablewright.ui.desktop;

import cablewright.ui.desktop.bench.BenchView;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;

/**
 * The Bench as a page: files that are opened or dropped while it is shown go onto it.
 *
 * @param bench the Bench
 */
record BenchPage(BenchView bench) implements Page.Content {

    @Override
    public Node node() {
        return bench;
    }

    @Override
    public void start() {
        bench.start();
    }

    @Override
    public Node picture() {
        return bench.tracks();
    }

    @Override
    public Optional<Consumer<Path>> files() {
        return Optional.of(bench::open);
    }
}
