// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.track;

import cablewright.lessons.text.Texts;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.reading.Cursor;
import cablewright.ui.drawing.axis.Extent;
import cablewright.ui.drawing.track.FlagMarker;
import cablewright.ui.words.Quantities;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What the trace track shows: a trace, perhaps another one to compare, flags, and what the cursor reads. */
public final class TraceTrackViewModel {

    private final AxisViewModel axis;
    private double referenceOhms;
    private final Texts texts;
    private final ReadingAids aids;
    private final ObjectProperty<Trace> trace = new SimpleObjectProperty<>();
    private final ObjectProperty<Trace> comparison = new SimpleObjectProperty<>();
    private final ObjectProperty<List<FlagMarker>> pennants = new SimpleObjectProperty<>(List.of());
    private final ObjectProperty<List<Extent>> lookHere = new SimpleObjectProperty<>(List.of());
    private final ObjectProperty<OptionalDouble> writtenTo = new SimpleObjectProperty<>(OptionalDouble.empty());
    private final BooleanProperty noiseShown = new SimpleBooleanProperty(false);

    /**
     * What the cursor reads.
     *
     * @param place distance and time
     * @param height reflection in percent and decibels
     * @param impedance apparent impedance, or what to say where there is none
     */
    public record Reading(String place, String height, String impedance) {

        /**
         * Says all in one line, for a screen reader.
         *
         * @return the three parts, with commas
         */
        public String spoken() {
            return place + ", " + height + ", " + impedance;
        }
    }

    /**
     * Makes the model of a track with no trace yet.
     *
     * @param axis the shared axis
     * @param referenceOhms reference resistance of reflections: that of the instrument's source [Ω]
     * @param texts texts of the desktop
     */
    public TraceTrackViewModel(AxisViewModel axis, double referenceOhms, Texts texts) {
        this.axis = axis;
        this.referenceOhms = referenceOhms;
        this.texts = texts;
        this.aids = new ReadingAids(this, texts);
    }

    /**
     * Returns what helps to read the trace.
     *
     * @return second cursor and other trace
     */
    public ReadingAids aids() {
        return aids;
    }

    /**
     * Converts reflections to another reference.
     *
     * @param ohms resistance of its source [Ω]
     */
    public void setReferenceOhms(double ohms) {
        referenceOhms = ohms;
    }

    Texts texts() {
        return texts;
    }

    /**
     * Returns the shared axis.
     *
     * @return the axis
     */
    public AxisViewModel axis() {
        return axis;
    }

    /**
     * Returns the trace.
     *
     * @return the trace; null until the first is there
     */
    public ObjectProperty<Trace> traceProperty() {
        return trace;
    }

    /**
     * Returns the trace that is laid over for comparison.
     *
     * @return the other trace, or null
     */
    public ObjectProperty<Trace> comparisonProperty() {
        return comparison;
    }

    public ObjectProperty<List<FlagMarker>> pennantsProperty() {
        return pennants;
    }

    /**
     * Returns where to look: stretches of the trace that tell what a finding is about.
     *
     * @return the stretches; none while nothing is pointed out
     */
    public ObjectProperty<List<Extent>> lookHereProperty() {
        return lookHere;
    }

    /**
     * Returns how far the trace is written while a wave plays.
     *
     * @return distance from which the port receives just now [m]; empty while nothing plays
     */
    public ObjectProperty<OptionalDouble> writtenToProperty() {
        return writtenTo;
    }

    /**
     * Returns whether the band of the noise is shown.
     *
     * @return true to show three times the noise's root mean square either way
     */
    public BooleanProperty noiseShownProperty() {
        return noiseShown;
    }

    /**
     * Reads the trace at the cursor.
     *
     * @return the reading; empty while there is no trace
     */
    public Optional<Reading> reading() {
        Trace shown = trace.get();
        if (shown == null) {
            return Optional.empty();
        }
        Quantities quantities = new Quantities(axis.unitProperty().get());
        Cursor cursor = Cursor.on(shown, axis.cursorMetresProperty().get());
        double share = cursor.volts();
        int digits = sampleMetres() < 0.02 ? 2 : 1;
        String place = texts.say(
                "cursor.place", quantities.length(cursor.metres(), digits), quantities.time(cursor.seconds()));
        if (Math.abs(share) >= shown.clipVolts() * (1 - 1e-9)) {
            return Optional.of(new Reading(
                    place, texts.say("cursor.clipped", quantities.percent(share)), texts.say("cursor.clipped.next")));
        }
        return Optional.of(new Reading(
                place,
                texts.say("cursor.height", quantities.percent(share), quantities.decibels(share)),
                isUnderOutgoingPulse(shown, cursor)
                        ? texts.say("cursor.outgoing")
                        : impedance(quantities, cursor.apparentOhms(referenceOhms))));
    }

    private static boolean isUnderOutgoingPulse(Trace shown, Cursor cursor) {
        return !shown.settings().stimulus().isStep()
                && cursor.seconds() + shown.zeroSeconds()
                        < shown.settings().stimulus().settledSeconds() + shown.zeroSeconds() / 2;
    }

    private String impedance(Quantities quantities, OptionalDouble ohms) {
        return ohms.isPresent()
                ? texts.say("cursor.impedance", quantities.ohms(ohms.getAsDouble()))
                : texts.say("cursor.noImpedance");
    }

    /**
     * Returns the distance of two samples.
     *
     * @return distance at the set velocity [m]
     */
    public double sampleMetres() {
        Trace shown = trace.get();
        return shown == null ? 0.1 : shown.settings().metresThereAndBack(shown.sampleSeconds());
    }
}
