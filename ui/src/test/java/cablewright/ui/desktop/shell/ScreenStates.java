// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.shell;

import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.simulator.cable.EventKind;
import cablewright.ui.desktop.practice.model.ExerciseViewModel;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToggleButton;

/** Every page of the window in each of its states, one after the other, as a person would come to them. */
final class ScreenStates {

    private final DesktopWindow window;
    private final Map<String, Runnable> states = new LinkedHashMap<>();

    ScreenStates(DesktopWindow window, Path measurement) {
        this.window = window;
        practice();
        demonstrations();
        states.put("classbook", () -> window.view().show("classbook"));
        bench();
        writing();
        states.put("measured", () -> window.view().show("measured"));
        states.put("measured-read", () -> window.openOnPage(measurement));
        states.put("help", () -> window.view().openHelp());
    }

    /** The states in their order. */
    Map<String, Runnable> inOrder() {
        return states;
    }

    private ExerciseViewModel exercise() {
        return window.practice().current();
    }

    private void practice() {
        states.put("practice", () -> window.practice().select(5));
        states.put("practice-flags", () -> {
            ExerciseViewModel exercise = exercise();
            exercise.settings().gainDecibelsProperty().set(20.0);
            exercise.settings().rangeMetresProperty().set(200.0);
            exercise.flags().place(32);
            exercise.flags().say("A", EventKind.PINCH);
            exercise.flags().place(71);
            exercise.flags().stretchSelected(77.1);
            exercise.flags().say("B", EventKind.WATER);
            exercise.axis().moveCursorTo(71.6);
        });
        states.put("practice-hints", () -> {
            exercise().traceTrack().aids().toggleSecond();
            exercise().takeHint();
        });
        states.put("practice-committed", () -> exercise().commit());
        states.put("practice-wave", () -> {
            exercise().reveal().wave().scrubTo(200);
        });
        states.put("practice-lattice", () -> {
            exercise().reveal().lattice().toggle();
        });
        states.put("practice-question", () -> window.practice().select(7));
    }

    private void demonstrations() {
        states.put("demonstration", () -> window.view().show("demonstrations"));
        states.put("demonstration-answered", () -> {
            ((RadioButton) find("#answer-0")).setSelected(true);
            ((RadioButton) find("#reason-0")).setSelected(true);
            ((Button) find("#answer")).fire();
        });
        states.put("demonstration-class", () -> ((Button) find("#class-mode-open")).fire());
        states.put("demonstration-class-revealed", () -> {
            for (String button : new String[] {"#more-0", "#more-2", "#more-2", "#class-next"}) {
                ((Button) find(button)).fire();
            }
        });
        states.put("demonstration-after-class", () -> ((Button) find("#class-leave")).fire());
    }

    private void bench() {
        states.put("bench", () -> {
            window.view().show(Pages.BENCH);
            window.bench().files().start(BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT));
        });
        states.put("bench-event", () -> {
            put(Insertable.PINCH, 103 + 12);
            put(Insertable.WATER, 97);
        });
        for (String tab : new String[] {"record", "exercise", "lesson", "sheet"}) {
            states.put("bench-" + tab, () -> {
                TabPane tabs = (TabPane) find("#bench-tabs");
                tabs.getTabs().stream()
                        .filter(one -> one.getId().equals("tab-" + tab))
                        .findFirst()
                        .ifPresent(one -> tabs.getSelectionModel().select(one));
            });
        }
    }

    private void writing() {
        states.put("bench-writing", () -> {
            ((ToggleButton) find("#bench-write")).fire();
            ((TabPane) find("#bench-tabs")).getSelectionModel().select(2);
        });
        states.put("bench-writing-lesson", () -> {
            ((TabPane) find("#bench-tabs")).getSelectionModel().select(3);
            ((Button) find("#handout-look")).fire();
        });
        states.put("bench-after-writing", () -> ((ToggleButton) find("#bench-write")).fire());
    }

    private void put(Insertable what, double metres) {
        window.bench().trace().axis().moveCursorTo(metres);
        window.bench().events().insert(what);
    }

    private Node find(String selector) {
        Node found = window.view().lookup(selector);
        if (found == null) {
            throw new AssertionError("nothing on the screen is " + selector);
        }
        return found;
    }
}
