// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.exercise.asbuilt.AsBuiltRecord;
import cablewright.lessons.exercise.asbuilt.RecordedEnd;
import cablewright.lessons.exercise.asbuilt.RecordedItem;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.bench.form.EditorTexts;
import cablewright.ui.desktop.bench.record.RecordPane;
import cablewright.ui.words.LengthUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.CheckBox;
import javafx.scene.control.MenuButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The editor of the as-built record, as an instructor uses it. The example's drawing has its splice 0.4 m too near. */
@ExtendWith(ApplicationExtension.class)
class RecordEditorScreenTest {

    private final DocumentViewModel document =
            new DocumentViewModel(BenchDocument.of(Examples.exercise("quay-3", Optional.empty())));
    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.METRES);
    private EditorStage screen;

    @Start
    void start(Stage stage) {
        screen = new EditorStage(stage, new RecordPane(document, unit, EditorTexts.open(Locale.ROOT), () -> 3), 380);
    }

    private AsBuiltRecord record() {
        return document.now().record();
    }

    private RecordedItem item(String id) {
        return record().items().stream()
                .filter(it -> it.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void differencesAreToldUntilTheRecordIsMadeFromTheCable() {
        assertEquals("≠ It is at 31.4\u00a0m: recorded 0.4\u00a0m too near.", screen.label("item-difference-S1"));
        assertTrue(screen.label("record-summary").contains("in one item"), screen.label("record-summary"));
        screen.press("record-make");
        assertEquals(31.4, item("S1").positionMetres());
        assertEquals("", screen.label("item-difference-S1"));
        assertEquals("The record agrees with the cable.", screen.label("record-summary"));
        assertEquals(Optional.of("make the record"), document.undoNameProperty().get());
    }

    @Test
    void recordIsSpoiltInEachWay() {
        screen.press("record-make");
        screen.choose("record-spoil", "record-spoil-never-built");
        assertTrue(record().mayLie());
        assertTrue(((CheckBox) screen.hands().find("#record-may-lie")).isSelected());
        assertEquals("≠ Nothing in the cable corresponds to it.", screen.label("item-difference-planned-tap1"));
        screen.press("item-remove-planned-tap1");
        screen.choose("record-spoil", "record-spoil-wrong-distance");
        assertTrue(screen.label("item-difference-S1").contains("too"), screen.label("item-difference-S1"));
        screen.choose("record-spoil", "record-spoil-left-out");
        assertEquals(List.of(), record().items());
        assertEquals("≠ Not recorded: splice at 31.4\u00a0m.", screen.label("not-drawn-S1"));
        screen.press("record-draw-S1");
        assertEquals(31.4, item("S1").positionMetres());
    }

    @Test
    void emptyRecordHasNothingToSpoilButCanShowWhatWasNeverBuilt() {
        screen.press("item-remove-S1");
        MenuButton spoil = (MenuButton) screen.hands().find("#record-spoil");
        screen.hands().run(spoil::show);
        assertEquals(
                List.of(true, true, false),
                spoil.getItems().stream().map(it -> it.isDisable()).toList());
        screen.hands().run(spoil::hide);
    }

    @Test
    void itemIsAddedMovedCalledOtherwiseAndTakenAway() {
        screen.choose("record-add", "record-add-tap");
        assertEquals("item-place-planned-tap1", screen.hands().focused().getId());
        screen.write("item-place-planned-tap1", "20,5");
        assertEquals(20.5, item("planned-tap1").positionMetres());
        screen.pick("item-kind-planned-tap1", EventKind.CONNECTOR);
        assertEquals(EventKind.CONNECTOR, item("planned-tap1").kind());
        screen.write("item-label-planned-tap1", "connector at the crane");
        assertEquals("connector at the crane", item("planned-tap1").label());
        assertEquals("planned-tap1", record().items().get(0).id(), "items stand in order of distance");
        screen.press("item-remove-planned-tap1");
        assertEquals(1, record().items().size());
    }

    @Test
    void typingIsOneStepAndUndoPutsItBackIntoTheField() {
        screen.hands().run(() -> screen.field("item-label-S1").requestFocus());
        screen.hands().run(() -> screen.field("item-label-S1").end());
        for (KeyCode key : List.of(KeyCode.A, KeyCode.B, KeyCode.C)) {
            screen.hands().type(key);
        }
        assertEquals("splice, pole 14abc", item("S1").label());
        screen.hands().type(KeyCode.Z, KeyCode.CONTROL);
        assertEquals("splice, pole 14", item("S1").label());
        assertEquals("splice, pole 14", screen.text("item-label-S1"));
        screen.hands().type(KeyCode.Y, KeyCode.CONTROL);
        assertEquals("splice, pole 14abc", screen.text("item-label-S1"));
    }

    @Test
    void impossibleInputStaysInItsFieldWithTheLimitAndTheLastGoodStateHolds() {
        screen.write("item-place-S1", "-3");
        assertEquals("Out of range. Allowed is 0 to 200000\u00a0m.", screen.label("item-place-S1-problem"));
        assertTrue(screen.field("item-place-S1").getAccessibleText().contains("Allowed is 0 to 200000"));
        assertEquals(31, item("S1").positionMetres());
        screen.write("item-place-S1", "far out");
        assertTrue(screen.label("item-place-S1-problem").startsWith("Not a number."));
        screen.write("item-label-S1", "");
        assertTrue(screen.label("item-label-S1-problem").contains("1 to 200 characters"));
        assertEquals("splice, pole 14", item("S1").label());
        assertEquals("far out", screen.text("item-place-S1"), "what was typed stays");
        screen.write("item-place-S1", "31.4");
        assertEquals("", screen.label("item-place-S1-problem"));
        assertEquals(31.4, item("S1").positionMetres());
    }

    @Test
    void lineIsSaidToBeOtherThanItIs() {
        screen.write("record-length", "150");
        assertEquals(
                "≠ The cable is 133.0\u00a0m long, 17.0\u00a0m less than recorded.",
                screen.label("record-length-difference"));
        screen.write("record-length", "");
        assertEquals(OptionalDouble.empty(), record().lengthMetres());
        screen.pick("record-end", RecordedEnd.Kind.OPEN);
        assertEquals("≠ In the cable: end: 75\u00a0Ω.", screen.label("record-end-difference"));
        screen.write("record-end-label", "cut off at the wall");
        screen.write("record-note", "From the harbour office");
        assertEquals(new RecordedEnd(RecordedEnd.Kind.OPEN, "cut off at the wall"), record().farEnd());
        assertEquals("From the harbour office", record().note());
    }

    @Test
    void feetAreTypedWhereFeetAreShown() {
        screen.hands().run(() -> unit.set(LengthUnit.FEET));
        assertEquals("101.71", screen.text("item-place-S1"));
        screen.write("item-place-S1", "100");
        assertEquals(30.48, item("S1").positionMetres(), 1e-12);
    }

    @Test
    void everyControlHasWords() {
        screen.choose("record-spoil", "record-spoil-never-built");
        assertEquals(List.of(), screen.unnamed());
        assertFalse(screen.hands().root().lookupAll(".text-field").isEmpty());
    }
}
