// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.practice.model;

import cablewright.lessons.exercise.Permitted;
import cablewright.lessons.exercise.Start;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.wave.Stimulus;
import java.util.Comparator;
import java.util.List;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.Property;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/** What is set on the instrument, within what the exercise permits. */
public final class SettingsViewModel {

    /** One step of the velocity key and of the velocity's arrows. */
    public static final double VELOCITY_STEP = 0.005;

    private final ReadOnlyObjectWrapper<Permitted> permitted;
    private final ObjectProperty<LineEnd> end;
    private final ObjectProperty<Stimulus> stimulus;
    private final DoubleProperty velocity;
    private final ObjectProperty<Double> rangeMetres;
    private final ObjectProperty<Double> gainDecibels;
    private final ObjectProperty<Integer> averages;

    /**
     * Sets what is set at the start.
     *
     * @param permitted the choices
     * @param start one of them
     */
    public SettingsViewModel(Permitted permitted, Start start) {
        this.permitted = new ReadOnlyObjectWrapper<>(permitted);
        this.end = new SimpleObjectProperty<>(start.end());
        this.stimulus = new SimpleObjectProperty<>(start.settings().stimulus());
        this.velocity = new SimpleDoubleProperty(start.settings().velocityFraction());
        this.rangeMetres = new SimpleObjectProperty<>(start.settings().rangeMetres());
        this.gainDecibels = new SimpleObjectProperty<>(start.settings().gainDecibels());
        this.averages = new SimpleObjectProperty<>(start.settings().averages());
    }

    public Permitted permitted() {
        return permitted.get();
    }

    /**
     * Returns what may be set, where that can change.
     *
     * @return the choices
     */
    public ReadOnlyObjectProperty<Permitted> permittedProperty() {
        return permitted.getReadOnlyProperty();
    }

    /**
     * Permits other choices. What is set stays where they have it; otherwise the nearest of them is taken, and a range that
     * holds what the one before held.
     *
     * @param choices the choices
     */
    public void permit(Permitted choices) {
        permitted.set(choices);
        if (!choices.ends().contains(end.get())) {
            end.set(choices.ends().get(0));
        }
        if (!choices.stimuli().contains(stimulus.get())) {
            setShape(stimulus.get().isStep() ? hasShape(true) : !hasShape(false));
        }
        setVelocity(velocity.get());
        rangeMetres.set(atLeast(rangeMetres.get(), choices.rangesMetres()));
        gainDecibels.set(atLeast(gainDecibels.get(), choices.gainsDecibels()));
        averages.set(atLeast(averages.get(), choices.averages()));
    }

    private boolean hasShape(boolean step) {
        return !ofShape(step).isEmpty();
    }

    private static <T extends Comparable<T>> T atLeast(T wanted, List<T> rising) {
        return rising.stream()
                .filter(one -> one.compareTo(wanted) >= 0)
                .findFirst()
                .orElse(rising.get(rising.size() - 1));
    }

    /**
     * Hears of every change of what is set, or of the end that is tested.
     *
     * @param listener what to do
     */
    public void whenChanged(Runnable listener) {
        List.<ObservableValue<?>>of(end, stimulus, velocity, rangeMetres, gainDecibels, averages)
                .forEach(value -> value.addListener((o, before, now) -> listener.run()));
    }

    public ObjectProperty<LineEnd> endProperty() {
        return end;
    }

    public ObjectProperty<Stimulus> stimulusProperty() {
        return stimulus;
    }

    public DoubleProperty velocityProperty() {
        return velocity;
    }

    public ObjectProperty<Double> rangeMetresProperty() {
        return rangeMetres;
    }

    public ObjectProperty<Double> gainDecibelsProperty() {
        return gainDecibels;
    }

    /**
     * Returns how many records are averaged.
     *
     * @return number of records
     */
    public ObjectProperty<Integer> averagesProperty() {
        return averages;
    }

    public Settings settings() {
        return new Settings(stimulus.get(), velocity.get(), rangeMetres.get(), gainDecibels.get(), averages.get());
    }

    /**
     * Lists the widths of the shape that is set.
     *
     * @return the permitted pulses where a pulse is set, the permitted steps where a step is set, shortest first
     */
    public List<Stimulus> widths() {
        return ofShape(stimulus.get().isStep());
    }

    private List<Stimulus> ofShape(boolean step) {
        return permitted().stimuli().stream()
                .filter(one -> one.isStep() == step)
                .sorted(Comparator.comparingDouble(Stimulus::resolutionSeconds))
                .toList();
    }

    /**
     * Returns whether both pulses and steps may be sent.
     *
     * @return true if there is a choice
     */
    public boolean hasBothShapes() {
        return !ofShape(true).isEmpty() && !ofShape(false).isEmpty();
    }

    /**
     * Sends a step or a pulse, of the width nearest to what was set.
     *
     * @param step true for a step
     */
    public void setShape(boolean step) {
        double wanted = stimulus.get().resolutionSeconds();
        ofShape(step).stream()
                .min(Comparator.comparingDouble(one -> Math.abs(Math.log(one.resolutionSeconds() / wanted))))
                .ifPresent(stimulus::set);
    }

    /**
     * Sets everything at once, as it was set before.
     *
     * @param before settings that are permitted
     */
    public void use(Settings before) {
        stimulus.set(before.stimulus());
        velocity.set(before.velocityFraction());
        rangeMetres.set(before.rangeMetres());
        gainDecibels.set(before.gainDecibels());
        averages.set(before.averages());
    }

    /**
     * Sets a velocity, kept within what is permitted.
     *
     * @param fraction share of the speed of light
     */
    public void setVelocity(double fraction) {
        double rounded = Math.round(fraction / VELOCITY_STEP * 10) * VELOCITY_STEP / 10;
        velocity.set(Math.max(
                permitted().velocity().leastFraction(),
                Math.min(permitted().velocity().mostFraction(), rounded)));
    }

    /**
     * Returns whether a setting can be changed at all.
     *
     * @param setting the setting
     * @return true if there is more than one choice
     */
    public boolean isFree(Setting setting) {
        switch (setting) {
            case END:
                return permitted().ends().size() > 1;
            case SHAPE:
                return hasBothShapes();
            case WIDTH:
                return widths().size() > 1;
            case VELOCITY:
                return !permitted().velocity().isFixed();
            case RANGE:
                return permitted().rangesMetres().size() > 1;
            case GAIN:
                return permitted().gainsDecibels().size() > 1;
            default:
                return permitted().averages().size() > 1;
        }
    }

    /**
     * Steps through the choices of a setting. After the last comes the first, but for the velocity, which stops.
     *
     * @param setting the setting
     * @param direction 1 for the next choice, −1 for the one before
     */
    public void step(Setting setting, int direction) {
        switch (setting) {
            case END:
                next(end, permitted().ends(), direction);
                break;
            case SHAPE:
                setShape(hasBothShapes() != stimulus.get().isStep());
                break;
            case WIDTH:
                next(stimulus, widths(), direction);
                break;
            case VELOCITY:
                setVelocity(velocity.get() + direction * VELOCITY_STEP);
                break;
            case RANGE:
                next(rangeMetres, permitted().rangesMetres(), direction);
                break;
            case GAIN:
                next(gainDecibels, permitted().gainsDecibels(), direction);
                break;
            default:
                next(averages, permitted().averages(), direction);
                break;
        }
    }

    private static <T> void next(Property<T> property, List<T> choices, int direction) {
        int now = choices.indexOf(property.getValue());
        property.setValue(choices.get(Math.floorMod(now + direction, choices.size())));
    }
}
