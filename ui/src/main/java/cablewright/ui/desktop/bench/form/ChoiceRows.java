// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.exercise.question.Choice;
import cablewright.lessons.text.Texts;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Answers, or reasons, of which one is right: written, ordered, added and taken away. */
final class ChoiceRows extends VBox {

    private static final int LEAST_CHOICES = 2;
    private static final int MOST_CHOICES = 8;

    private final String id;
    private final String words;
    private final DocumentViewModel document;
    private final Texts texts;
    private final Function<BenchDocument, Optional<Key>> get;
    private final Take take;
    private final Button add;
    private final ChangeListener<BenchDocument> follow = (o, before, now) -> show(now);

    /**
     * Choices and the right one.
     *
     * @param choices the choices
     * @param right id of the right one
     */
    record Key(List<Choice> choices, String right) {

        Key withChoices(List<Choice> other) {
            return new Key(other, right);
        }
    }

    /** Puts changed choices into the document. */
    interface Take {

        /** Does a step by itself. */
        Optional<String> step(String name, UnaryOperator<Key> edit);

        /** Does a part of what is typed in one visit to a field. */
        Optional<String> type(String field, UnaryOperator<Key> edit);
    }

    /**
     * Makes the rows.
     *
     * @param id beginning of the names of the nodes
     * @param words beginning of the keys of the sentences
     */
    ChoiceRows(
            String id,
            String words,
            DocumentViewModel document,
            Texts texts,
            Function<BenchDocument, Optional<Key>> get,
            Take take) {
        this.id = id;
        this.words = words;
        this.document = document;
        this.texts = texts;
        this.get = get;
        this.take = take;
        this.add = new Button(texts.say(words + ".add"));
        getStyleClass().add("section-fields");
        add.setAccessibleText(texts.say(words + ".add"));
        add.setId(id + "-add");
        add.setOnAction(event -> take.step(texts.say("question.step.choice"), this::withAnother));
        getChildren()
                .addAll(
                        new IndexedRows(
                                document,
                                now -> get.apply(now)
                                        .map(it -> it.choices().size())
                                        .orElse(0),
                                this::row),
                        add);
        show(document.now());
        document.documentProperty().addListener(new WeakChangeListener<>(follow));
    }

    private void show(BenchDocument now) {
        add.setDisable(
                get.apply(now).map(it -> it.choices().size() >= MOST_CHOICES).orElse(true));
    }

    private Key withAnother(Key before) {
        List<String> taken = before.choices().stream().map(Choice::id).toList();
        char letter = 'a';
        while (taken.contains(String.valueOf(letter))) {
            letter++;
        }
        Choice another = new Choice(
                String.valueOf(letter), texts.say("question.first.other"), texts.say("question.first.reason"));
        return before.withChoices(Order.with(before.choices(), another));
    }

    private Optional<Choice> choice(BenchDocument now, int index) {
        return get.apply(now)
                .map(Key::choices)
                .filter(all -> index < all.size())
                .map(all -> all.get(index));
    }

    private boolean isRight(BenchDocument now, int index) {
        Optional<String> right = get.apply(now).map(Key::right);
        return right.isPresent() && choice(now, index).map(Choice::id).equals(right);
    }

    private Node row(int index) {
        int number = index + 1;
        SwitchField right = new SwitchField(
                id + "-right-" + number,
                texts.say(words + ".right", number),
                document,
                now -> isRight(now, index),
                on -> take.step(
                        texts.say("question.step.right"),
                        it -> new Key(it.choices(), it.choices().get(index).id())));
        right.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(right, Priority.ALWAYS);
        RowButtons buttons = new RowButtons(
                id,
                words,
                number,
                texts,
                by -> take.step(
                        texts.say("question.step.choice"), it -> it.withChoices(Order.moved(it.choices(), index, by))),
                () -> take.step(texts.say("question.step.choice"), it -> without(it, index)));
        HBox head = new HBox(right, buttons);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox row = new VBox(
                head,
                field(index, ".text", "-text-", Choice::text, (it, text) -> new Choice(it.id(), text, it.reason())),
                field(index, ".why", "-why-", Choice::reason, (it, text) -> new Choice(it.id(), it.text(), text)));
        row.setMinHeight(Region.USE_PREF_SIZE);
        row.getStyleClass().add("item-row");
        return row;
    }

    /** Two stay; where the right one goes, the first that is left is right. */
    private static Key without(Key before, int index) {
        List<Choice> left = new ArrayList<>(before.choices());
        Choice gone = left.remove(index);
        if (left.size() < LEAST_CHOICES) {
            return before;
        }
        return new Key(left, gone.id().equals(before.right()) ? left.get(0).id() : before.right());
    }

    /** Changes one text of a choice. */
    private interface With {
        Choice change(Choice before, String text);
    }

    private TypedField field(int index, String key, String nodeName, Function<Choice, String> shown, With with) {
        int number = index + 1;
        FieldViewModel model = new FieldViewModel(
                document,
                now -> choice(now, index).map(shown).orElse(""),
                typed -> take.type(
                        id + nodeName + number,
                        it -> it.withChoices(Order.replaced(
                                it.choices(), index, with.change(it.choices().get(index), typed)))));
        return new TypedField(id + nodeName + number, texts.say(words + key, number), model);
    }
}
