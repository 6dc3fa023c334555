// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.bench.field.ChoiceField;
import cablewright.lessons.bench.field.EventField;
import cablewright.lessons.bench.field.EventFields;
import cablewright.lessons.bench.field.NumberField;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.choice.ChoiceLook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;

/** The inspector of one event: its name, how it shows, and all of its numbers and choices. */
final class EventPane extends VBox {

    private final BenchViewModel model;
    private final Texts texts;
    private final Label title = new Label();
    private final TextField name = new TextField();
    private final Label nameFault = new Label();
    private final VBox rows = new VBox();
    private final Map<String, Node> byKey = new LinkedHashMap<>();
    private Event shown;

    EventPane(BenchViewModel model) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().add("inspector");
        title.getStyleClass().add("card-title");
        title.setId("event-title");
        name.setId("event-name");
        name.setAccessibleText(texts.say("event.name"));
        Label caption = new Label(texts.say("event.name"));
        caption.setLabelFor(name);
        nameFault.getStyleClass().add("fault");
        nameFault.setWrapText(true);
        name.textProperty().addListener((o, before, now) -> tellName(""));
        name.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                rename();
                event.consume();
            }
        });
        name.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                rename();
            }
        });
        tellName("");
        rows.getStyleClass().add("dials");
        VBox named = new VBox(caption, name, nameFault);
        getChildren().addAll(title, new VisibilityCard(model), rows, named);
    }

    private void tellName(String fault) {
        nameFault.setText(fault);
        nameFault.setVisible(!fault.isEmpty());
        nameFault.setManaged(!fault.isEmpty());
    }

    private void rename() {
        if (shown != null && !name.getText().equals(shown.id())) {
            tellName(model.events().rename(shown.id(), name.getText().strip()).orElse(""));
        }
    }

    /** Shows an event as it is now; rows that it had before stay, with the hand that is on them. */
    void show(Event event) {
        Cable cable = model.document().now().cable();
        List<EventField> fields = EventFields.of(cable, event);
        boolean same =
                shown != null && shown.id().equals(event.id()) && keys(fields).equals(new ArrayList<>(byKey.keySet()));
        shown = event;
        title.setText(texts.say("event.title", model.words().kind(event.kind()), event.id()));
        if (!name.isFocused()) {
            name.setText(event.id());
        }
        if (!same) {
            rows.getChildren().clear();
            byKey.clear();
            for (EventField field : fields) {
                Node row = row(event.id(), field);
                byKey.put(field.key(), row);
                rows.getChildren().add(row);
            }
        }
        fields.forEach(field -> update(byKey.get(field.key()), field));
    }

    private static List<String> keys(List<EventField> fields) {
        return fields.stream().map(EventField::key).toList();
    }

    private Node row(String id, EventField field) {
        String words = texts.say("field." + field.key());
        if (field instanceof NumberField numberField) {
            return new DialRow(
                    Dial.of(numberField),
                    words,
                    texts,
                    model.trace().axis().unitProperty()::get,
                    new Turned(id, field.key(), words));
        }
        ChoiceField choice = (ChoiceField) field;
        return new ChoiceRow<String>(
                field.key(),
                words,
                ChoiceLook.of(word -> word(choice.key(), word)),
                word -> choose(id, choice.key(), words, word));
    }

    private String word(String key, String word) {
        return key.equals("picture") ? model.words().texts().say("picture." + word) : texts.say("choice." + word);
    }

    @SuppressWarnings("unchecked")
    private static void update(Node row, EventField field) {
        if (row instanceof DialRow dialRow) {
            dialRow.show(Dial.of((NumberField) field));
        } else {
            ChoiceField choice = (ChoiceField) field;
            ((ChoiceRow<String>) row).show(choice.choices(), choice.chosen());
        }
    }

    private void choose(String id, String key, String words, String word) {
        model.document()
                .step(texts.say("do.change", words, id), changing(id, key, field -> ((ChoiceField) field).with(word)));
    }

    /** An edit of one field, as the event is by then. */
    private static UnaryOperator<BenchDocument> changing(
            String id, String key, java.util.function.Function<EventField, Event> change) {
        return document -> document.built(cable -> {
            Event event =
                    cable.event(id).orElseThrow(() -> new IllegalArgumentException(id + " is not there any more"));
            EventField field = EventFields.of(cable, event).stream()
                    .filter(one -> one.key().equals(key))
                    .findFirst()
                    .orElseThrow();
            return CableEdits.changed(cable, change.apply(field));
        });
    }

    /** A dial of the event under somebody's hand. */
    private final class Turned implements DialRow.Turning {
        private final String id;
        private final String key;
        private final String words;

        Turned(String id, String key, String words) {
            this.id = id;
            this.key = key;
            this.words = words;
        }

        @Override
        public Optional<String> turn(OptionalDouble value) {
            return model.document()
                    .move(
                            texts.say("do.change", words, id),
                            "field/" + id + "/" + key,
                            changing(
                                    id,
                                    key,
                                    field -> value.isPresent()
                                            ? ((NumberField) field).with(value.getAsDouble())
                                            : ((NumberField) field).without()));
        }

        @Override
        public void done() {
            model.document().endMovement();
        }
    }

    /** Puts the focus on the first number. */
    void enter() {
        byKey.values().stream().filter(DialRow.class::isInstance).findFirst().ifPresent(row -> ((DialRow) row)
                .field()
                .requestFocus());
    }

    void enterName() {
        name.requestFocus();
        name.selectAll();
    }
}
