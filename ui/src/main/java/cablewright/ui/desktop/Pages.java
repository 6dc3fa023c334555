package cablewright.ui.desktop;

import cablewright.ui.desktop.demonstrations.DemonstrationsView;
import cablewright.ui.desktop.practice.PracticeView;
import cablewright.ui.desktop.task.Threads;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;

/** The pages of the window, in the order of the bar. Another page is one more line in {@link #with}. */
final class Pages {

    private final WindowViewModel model;
    private final Threads threads;
    private DemonstrationsView demonstrations;

    Pages(WindowViewModel model, Threads threads) {
        this.model = model;
        this.threads = threads;
    }

    /** The pages around a lesson; those that do not hang on it are kept from lesson to lesson. */
    List<Page> with(PracticeView practice) {
        return List.of(
                new Page("practice", () -> content(practice, practice::start, practice::tracks)),
                new Page("demonstrations", this::demonstrations));
    }

    private Page.Content demonstrations() {
        if (demonstrations == null) {
            demonstrations = new DemonstrationsView(model.unitProperty(), model.darkProperty(), threads);
        }
        DemonstrationsView shown = demonstrations;
        return content(shown, shown::start, () -> shown);
    }

    private static Page.Content content(Node node, Runnable start, Supplier<Node> picture) {
        return new Page.Content() {
            @Override
            public Node node() {
                return node;
            }

            @Override
            public void start() {
                start.run();
            }

            @Override
            public Node picture() {
                return picture.get();
            }
        };
    }
}
