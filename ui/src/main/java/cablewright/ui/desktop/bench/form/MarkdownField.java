// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.practice.MarkdownText;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A text in Markdown as it is written and, beside it or beneath it in a narrow column, as trainees will read it. */
public final class MarkdownField extends VBox {

    private static final PseudoClass WIDE = PseudoClass.getPseudoClass("wide");
    private static final double WIDE_LETTERS = 46;
    private static final int LEAST_ROWS = 3;
    private static final int MOST_ROWS = 14;
    private static final int LETTERS_IN_ROW = 44;

    private final TextArea area = new TextArea();
    private final ScrollPane preview = new ScrollPane();
    private final GridPane both = new GridPane();
    private final String previewName;
    private boolean wide;

    /**
     * Makes a field.
     *
     * @param id name of the node
     * @param name what is written there
     * @param model what it shows and takes
     * @param texts the sentences of the editors
     */
    public MarkdownField(String id, String name, FieldViewModel model, Texts texts) {
        this.previewName = texts.say("markdown.preview", name);
        getStyleClass().addAll("field", "markdown-field");
        Label label = new Label(name);
        label.getStyleClass().add("field-name");
        label.setLabelFor(area);
        label.setWrapText(true);
        area.setId(id);
        area.setWrapText(true);
        area.setPromptText(texts.say("markdown.prompt"));
        area.textProperty().bindBidirectional(model.textProperty());
        preview.setId(id + "-preview");
        preview.setFitToWidth(true);
        preview.getStyleClass().add("markdown-preview");
        both.getStyleClass().add("markdown-both");
        GridPane.setHgrow(area, Priority.ALWAYS);
        GridPane.setHgrow(preview, Priority.ALWAYS);
        layOut(false);
        getChildren().addAll(label, both, new ProblemLabel(id, area, name, model.problemProperty()));
        EditKeys.on(area, model);
        area.textProperty().addListener((o, before, now) -> render(now));
        render(area.getText());
        widthProperty().addListener((o, before, now) -> adapt(now.doubleValue()));
    }

    private void render(String markdown) {
        MarkdownText read = new MarkdownText(markdown);
        preview.setContent(read);
        // As high as the text is at this width; the style sheet sets how much of the column it may take.
        preview.prefViewportHeightProperty().bind(read.heightProperty());
        preview.setAccessibleText(previewName + ": " + read.getAccessibleText());
        int rows = 0;
        for (String line : markdown.split("\n", -1)) {
            rows += 1 + line.length() / LETTERS_IN_ROW;
        }
        area.setPrefRowCount(Math.max(LEAST_ROWS, Math.min(MOST_ROWS, rows)));
    }

    private void adapt(double width) {
        boolean wanted = width > WIDE_LETTERS * area.getFont().getSize();
        if (wanted != wide) {
            layOut(wanted);
        }
    }

    private void layOut(boolean beside) {
        wide = beside;
        pseudoClassStateChanged(WIDE, beside);
        both.getChildren().clear();
        both.add(area, 0, 0);
        both.add(preview, beside ? 1 : 0, beside ? 0 : 1);
        area.setMinHeight(Region.USE_PREF_SIZE);
        preview.setMinHeight(Region.USE_PREF_SIZE);
    }
}
