// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.inspector;

import cablewright.lessons.bench.field.Measure;
import cablewright.lessons.bench.field.NumberField.Travel;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.check.Range;
import cablewright.simulator.line.CableType;
import cablewright.ui.desktop.bench.model.BenchViewModel;
import cablewright.ui.desktop.bench.model.CableViewModel;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.NoticeWords;
import cablewright.ui.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The inspector of the cable itself. */
final class CablePane extends VBox {

    private final BenchViewModel model;
    private final CableViewModel cable;
    private final Texts texts;
    private final TextField title = new TextField();
    private final Label fault = new Label();
    private final VBox runs = new VBox();
    private final List<RunRow> runRows = new ArrayList<>();
    private final ChoiceRow<CableViewModel.End> end;
    private final DialRow endOhms;
    private final DialRow celsius;
    private final CheckBox hasLead;
    private final ChoiceRow<CableType> leadType;
    private final DialRow leadLength;
    private final Label remarksHead;
    private final Label remarks = new Label();

    CablePane(BenchViewModel model) {
        this.model = model;
        this.cable = model.cable();
        this.texts = model.texts();
        getStyleClass().addAll("inspector", "inspector-page");
        setId("cable-pane");
        end = new ChoiceRow<>("end", texts.say("cable.end"), this::endWord, this::chooseEnd);
        endOhms = dial(endDial(75), cable::endOhms);
        celsius = dial(celsiusDial(20), cable::celsius);
        hasLead = new CheckBox(texts.say("cable.lead"));
        hasLead.setId("has-lead");
        hasLead.setOnAction(event -> say(cable.hasLead(hasLead.isSelected())));
        leadType = new ChoiceRow<>(
                "lead", texts.say("cable.leadType"), CableType::title, type -> say(cable.leadType(type)));
        leadLength = dial(leadDial(2), cable::leadLength);
        runs.getStyleClass().add("runs");
        fault.getStyleClass().add("fault");
        fault.setId("cable-fault");
        fault.setWrapText(true);
        fault.setMinHeight(Region.USE_PREF_SIZE);
        Label hint = new Label(texts.say("cable.hint"));
        hint.setWrapText(true);
        hint.setMinHeight(Region.USE_PREF_SIZE);
        hint.getStyleClass().add("quiet");
        getChildren().addAll(titleRow(), hint, head("cable.runs"), runs, fault, head("cable.endHead"), end, endOhms);
        getChildren().addAll(head("cable.around"), celsius, hasLead, leadType, leadLength);
        remarksHead = head("cable.remarks");
        remarks.setId("cable-remarks");
        remarks.setWrapText(true);
        remarks.setMinHeight(Region.USE_PREF_SIZE);
        remarks.getStyleClass().add("quiet");
        getChildren().addAll(remarksHead, remarks);
        model.trace().settings().stimulusProperty().addListener(changed -> showRemarks());
        model.trace().axis().unitProperty().addListener(changed -> showRemarks());
    }

    /** Where a model is used beyond its range, the result says so. */
    private void showRemarks() {
        double top = model.trace().settings().stimulusProperty().get().topHertz();
        List<String> sentences = new NoticeWords(Words.in(unit().get(), texts.locale())).of(cable.cable(), top);
        remarks.setText(String.join("\n", sentences));
        shown(remarksHead, !sentences.isEmpty());
        shown(remarks, !sentences.isEmpty());
    }

    private Node titleRow() {
        Label caption = new Label(texts.say("cable.title"));
        caption.setLabelFor(title);
        title.setId("cable-title");
        title.setAccessibleText(texts.say("cable.title"));
        title.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                say(cable.title(title.getText()));
                event.consume();
            }
        });
        title.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                say(cable.title(title.getText()));
            }
        });
        return new VBox(caption, title);
    }

    private Label head(String key) {
        Label head = new Label(texts.say(key));
        head.getStyleClass().add("inspector-head");
        return head;
    }

    private DialRow dial(Dial dial, Function<Double, Optional<String>> turn) {
        return dial(dial, texts.say("field." + dial.key()), texts, unit(), turn, cable::done);
    }

    private Supplier<LengthUnit> unit() {
        return model.trace().axis().unitProperty()::get;
    }

    static DialRow dial(
            Dial dial,
            String name,
            Texts texts,
            Supplier<LengthUnit> unit,
            Function<Double, Optional<String>> turn,
            Runnable done) {
        return new DialRow(dial, name, texts, unit, new DialRow.Turning() {
            @Override
            public Optional<String> turn(OptionalDouble value) {
                return turn.apply(value.getAsDouble());
            }

            @Override
            public void done() {
                done.run();
            }
        });
    }

    private static Dial endDial(double ohms) {
        return Dial.of("endOhms", Measure.RESISTANCE, ohms, Range.above(0, 1e9), Travel.byFactors(10, 1000));
    }

    private static Dial celsiusDial(double celsius) {
        return Dial.of(
                "cableCelsius",
                Measure.TEMPERATURE,
                celsius,
                Range.of(Cable.class, "celsius"),
                Travel.of(Cable.class, "celsius"));
    }

    private static Dial leadDial(double metres) {
        return Dial.of(
                "leadMetres",
                Measure.LENGTH,
                metres,
                Range.of(TestLead.class, "lengthMetres"),
                Travel.of(TestLead.class, "lengthMetres"));
    }

    private String endWord(CableViewModel.End one) {
        return texts.say("end." + one.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private void chooseEnd(CableViewModel.End one) {
        say(cable.end(one));
    }

    private void say(Optional<String> wrong) {
        fault.setText(wrong.orElse(""));
        fault.setVisible(wrong.isPresent());
        fault.setManaged(wrong.isPresent());
    }

    /** Shows the cable as it is now. */
    void show() {
        Cable now = cable.cable();
        if (!title.isFocused()) {
            title.setText(now.title());
        }
        showRuns(now);
        List<CableViewModel.End> ends = new ArrayList<>(List.of(CableViewModel.End.values()));
        if (cable.end() != CableViewModel.End.LOAD) {
            ends.remove(CableViewModel.End.LOAD);
        }
        end.show(ends, cable.end());
        shown(endOhms, cable.endOhms().isPresent());
        cable.endOhms().ifPresent(ohms -> endOhms.show(endDial(ohms)));
        celsius.show(celsiusDial(now.celsius()));
        Optional<TestLead> lead = now.testLead();
        hasLead.setSelected(lead.isPresent());
        shown(leadType, lead.isPresent());
        shown(leadLength, lead.isPresent());
        lead.ifPresent(it -> {
            leadType.show(cable.types(), it.type());
            leadLength.show(leadDial(it.lengthMetres()));
        });
        showRemarks();
        say(Optional.empty());
    }

    private void showRuns(Cable now) {
        while (runRows.size() > now.runs().size()) {
            runs.getChildren().remove(runRows.remove(runRows.size() - 1));
        }
        while (runRows.size() < now.runs().size()) {
            RunRow row = new RunRow(model, runRows.size(), this::say);
            runRows.add(row);
            runs.getChildren().add(row);
        }
        List<CableType> types = cable.types();
        runRows.forEach(row -> row.show(now, types));
    }

    private static void shown(Node node, boolean isShown) {
        node.setVisible(isShown);
        node.setManaged(isShown);
    }

    void enter() {
        runRows.get(0).enter();
    }

    void enterTitle() {
        title.requestFocus();
        title.selectAll();
    }
}
