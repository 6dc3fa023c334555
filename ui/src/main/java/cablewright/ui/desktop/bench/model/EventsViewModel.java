// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.bench.edit.EventClip;
import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.LineEnd;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.track.AxisViewModel;
import cablewright.ui.desktop.track.AxisViewModel.Stride;
import cablewright.ui.desktop.track.MarkActions;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** The events of the cable as they are selected, put on, moved, copied and taken away. */
public final class EventsViewModel implements MarkActions {

    private final DocumentViewModel document;
    private final BenchTraceViewModel trace;
    private final TextClipboard clipboard;
    private final InsertWords names;
    private final Texts texts;
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper("");
    private final ObjectProperty<Optional<Insertable>> armed = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyBooleanWrapper awaitsLetter = new ReadOnlyBooleanWrapper();
    private Runnable placing = () -> {};
    private Optional<Drag> drag = Optional.empty();

    /** What is dragged: where everything began, and the scale of the axis meanwhile. */
    private record Drag(String id, Map<String, Double> starts, ShownPlaces places) {}

    EventsViewModel(
            DocumentViewModel document,
            BenchTraceViewModel trace,
            TextClipboard clipboard,
            InsertWords names,
            Texts texts) {
        this.document = document;
        this.trace = trace;
        this.clipboard = clipboard;
        this.names = names;
        this.texts = texts;
        document.documentProperty().addListener(changed -> keepSelection());
    }

    private void keepSelection() {
        Set<String> there = new LinkedHashSet<>(selected());
        there.removeIf(id -> cable().event(id).isEmpty());
        if (!there.equals(selected())) {
            choose(there);
        }
    }

    private Cable cable() {
        return document.now().cable();
    }

    /**
     * Returns which events are selected.
     *
     * @return their names, in the order of the cable; the track frames them and the inspector shows them
     */
    public ObjectProperty<Set<String>> selectedProperty() {
        return trace.cableTrack().selectedProperty();
    }

    public Set<String> selected() {
        return selectedProperty().get();
    }

    private void choose(Set<String> ids) {
        selectedProperty().set(Set.copyOf(ids));
    }

    /**
     * Returns the one event that is selected.
     *
     * @return the event; empty where none is, or several are
     */
    public Optional<Event> one() {
        return selected().size() == 1 ? cable().event(selected().iterator().next()) : Optional.empty();
    }

    /**
     * Returns why the last thing could not be done.
     *
     * @return a sentence, or nothing
     */
    public ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }

    /**
     * Returns what goes on the cable where it is clicked next.
     *
     * @return the thing; empty where a click selects
     */
    public ObjectProperty<Optional<Insertable>> armedProperty() {
        return armed;
    }

    /**
     * Returns whether the next letter puts something on the cable.
     *
     * @return true after the key that asks for one
     */
    public ReadOnlyBooleanProperty awaitsLetterProperty() {
        return awaitsLetter.getReadOnlyProperty();
    }

    public void waitForLetter(boolean waits) {
        awaitsLetter.set(waits);
    }

    /** Leaves what was begun: nothing waits for a click any more; if nothing did, nothing is selected any more. */
    public void leave() {
        fault.set("");
        if (armed.get().isPresent()) {
            armed.set(Optional.empty());
        } else {
            selectNone();
        }
    }

    /** Names what is asked when somebody wants to put something where the cursor stands. */
    public void onPlacing(Runnable ask) {
        placing = ask;
    }

    private boolean step(String name, UnaryOperator<Cable> edit) {
        Optional<String> wrong = document.step(name, before -> before.built(edit));
        fault.set(wrong.orElse(""));
        return wrong.isEmpty();
    }

    private double cursor() {
        return trace.axis().cursorMetresProperty().get();
    }

    /**
     * Puts something on the cable at the cursor, and selects it.
     *
     * @param what the thing
     */
    public void insert(Insertable what) {
        armed.set(Optional.empty());
        double metres = trace.places(Set.of()).onCable(cursor());
        double halfPulse = trace.settings().settings().halfPulseMetres();
        if (step(texts.say("do.insert", names.name(what)), cable -> what.putOn(cable, metres, halfPulse))) {
            List<Event> events = cable().events();
            choose(Set.of(events.get(events.size() - 1).id()));
        }
    }

    /** Puts what is armed on the cable at the cursor. */
    public void insertArmed() {
        armed.get().ifPresent(this::insert);
    }

    @Override
    public void select(String id, boolean beside) {
        Set<String> ids = new LinkedHashSet<>();
        if (beside) {
            ids.addAll(selected());
            if (!ids.remove(id)) {
                ids.add(id);
            }
        } else if (selected().contains(id)) {
            ids.addAll(selected());
        } else {
            ids.add(id);
        }
        choose(ids);
    }

    /** Selects nothing: the inspector shows the cable. */
    public void selectNone() {
        choose(Set.of());
    }

    /** Selects every event. */
    public void selectAll() {
        choose(new LinkedHashSet<>(cable().events().stream().map(Event::id).toList()));
    }

    /**
     * Selects the next event along the axis, and shows it.
     *
     * @param direction 1 away from the tested end, −1 toward it
     */
    public void selectNeighbour(int direction) {
        int way = trace.endProperty().get() == LineEnd.NEAR ? direction : -direction;
        List<Event> ordered = cable().events().stream()
                .sorted(Comparator.comparingDouble(Event::startMetres))
                .toList();
        if (ordered.isEmpty()) {
            return;
        }
        int now = -1;
        for (int i = 0; i < ordered.size(); i++) {
            if (selected().contains(ordered.get(i).id())) {
                now = i;
            }
        }
        int next = now < 0 ? (way > 0 ? 0 : ordered.size() - 1) : Math.floorMod(now + way, ordered.size());
        Event event = ordered.get(next);
        choose(Set.of(event.id()));
        boolean near = trace.endProperty().get() == LineEnd.NEAR;
        trace.axis().showCursorAt(trace.places(Set.of()).shown(near ? event.startMetres() : event.endMetres()));
    }

    @Override
    public void drag(String id, double shownMetres) {
        if (drag.filter(it -> it.id().equals(id)).isEmpty()) {
            Map<String, Double> starts = new HashMap<>();
            for (String one : selected().contains(id) ? selected() : Set.of(id)) {
                cable().event(one).ifPresent(event -> starts.put(one, event.startMetres()));
            }
            drag = Optional.of(new Drag(id, starts, trace.places(starts.keySet())));
        }
        Drag held = drag.get();
        cable().event(id).ifPresent(event -> {
            double length = event.endMetres() - event.startMetres();
            double nearEdge = held.places().onCable(shownMetres);
            double start = trace.endProperty().get() == LineEnd.NEAR ? nearEdge : nearEdge - length;
            moveBy(held.starts(), hundredths(start) - held.starts().get(id), "drag");
        });
    }

    private static double hundredths(double metres) {
        return Math.rint(metres * 100) / 100;
    }

    private void moveBy(Map<String, Double> starts, double metres, String movement) {
        Optional<String> wrong = document.move(
                nameOf("do.move", starts.keySet()),
                movement + starts.keySet(),
                before -> before.built(cable -> {
                    Cable moved = cable;
                    for (Map.Entry<String, Double> start : starts.entrySet()) {
                        moved = CableEdits.moved(moved, start.getKey(), start.getValue() + metres);
                    }
                    return moved;
                }));
        fault.set(wrong.orElse(""));
    }

    private String nameOf(String key, Set<String> ids) {
        return ids.size() == 1
                ? texts.say(key, ids.iterator().next())
                : texts.say(key, texts.say("do.several", ids.size()));
    }

    @Override
    public void drop() {
        drag = Optional.empty();
        document.endMovement();
    }

    @Override
    public void place(double shownMetres) {
        trace.axis().moveCursorTo(shownMetres);
        placing.run();
    }

    /**
     * Moves what is selected by a key.
     *
     * @param direction 1 toward greater distances on the axis, −1 toward smaller ones
     * @param stride how far
     */
    public void nudge(int direction, Stride stride) {
        AxisViewModel axis = trace.axis();
        double step = axis.strideMetres(stride, trace.traceTrack().sampleMetres());
        int way = trace.endProperty().get() == LineEnd.NEAR ? direction : -direction;
        Map<String, Double> starts = starts();
        if (!starts.isEmpty()) {
            moveBy(starts, way * step, "nudge");
        }
    }

    private Map<String, Double> starts() {
        Map<String, Double> starts = new HashMap<>();
        selected().forEach(id -> cable().event(id).ifPresent(event -> starts.put(id, event.startMetres())));
        return starts;
    }

    /** Moves what is selected to the cursor, the first of it there and the rest as far from it as it was. */
    public void moveToCursor() {
        Map<String, Double> starts = starts();
        if (starts.isEmpty()) {
            return;
        }
        double first = starts.values().stream().mapToDouble(it -> it).min().orElseThrow();
        double there = trace.places(starts.keySet()).onCable(cursor());
        moveBy(starts, hundredths(there) - first, "cursor");
        document.endMovement();
    }

    /** Takes what is selected away. */
    public void remove() {
        Set<String> ids = selected();
        if (!ids.isEmpty()) {
            step(nameOf("do.remove", ids), cable -> CableEdits.without(cable, ids));
        }
    }

    /** Copies what is selected. */
    public void copy() {
        EventClip.of(cable(), selected()).ifPresent(clip -> clipboard.put(clip.text()));
    }

    /** Copies what is selected and takes it away. */
    public void cut() {
        copy();
        remove();
    }

    /** Puts what was copied on the cable, the first of it at the cursor. */
    public void paste() {
        Optional<EventClip> clip = clipboard.get().flatMap(EventClip::ofText);
        if (clip.isEmpty()) {
            fault.set(texts.say("paste.nothing"));
            return;
        }
        pasteAt(clip.get(), trace.places(Set.of()).onCable(cursor()), "do.paste");
    }

    /** Puts the same once more beside what is selected. */
    public void duplicate() {
        EventClip.of(cable(), selected())
                .ifPresent(clip -> pasteAt(
                        clip,
                        selected().stream()
                                        .flatMap(id -> cable().event(id).stream())
                                        .mapToDouble(Event::endMetres)
                                        .max()
                                        .orElseThrow()
                                + trace.settings().settings().halfPulseMetres(),
                        "do.duplicate"));
    }

    private void pasteAt(EventClip clip, double metres, String key) {
        int count = clip.cable().events().size();
        String what = count == 1 ? clip.cable().events().get(0).id() : texts.say("do.several", count);
        if (step(texts.say(key, what), cable -> clip.paste(cable, metres).cable())) {
            List<Event> events = cable().events();
            choose(new LinkedHashSet<>(events.subList(events.size() - count, events.size()).stream()
                    .map(Event::id)
                    .toList()));
        }
    }

    /**
     * Gives an event another name, in the cable and in the record.
     *
     * @param id its name
     * @param name its name to be
     * @return why it can't have it; empty where it has
     */
    public Optional<String> rename(String id, String name) {
        if (id.equals(name)) {
            return Optional.empty();
        }
        Optional<String> wrong = document.step(texts.say("do.rename", id, name), before -> before.renamed(id, name));
        if (wrong.isEmpty()) {
            choose(Set.of(name));
        }
        return wrong;
    }

    /** Cuts the run at the cursor in two, so that one of them can be changed. */
    public void cutRun() {
        double metres = hundredths(trace.places(Set.of()).onCable(cursor()));
        step(texts.say("do.cutRun"), cable -> CableEdits.cutAt(cable, metres));
    }
}
