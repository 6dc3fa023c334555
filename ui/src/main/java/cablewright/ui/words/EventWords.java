// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.words;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.Heat;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.cable.condition.LineCondition;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
import cablewright.simulator.cable.event.EventVisitor;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.BrokenConductor;
import cablewright.simulator.cable.hardware.BuildOut;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.CorrodedJoint;
import cablewright.simulator.cable.hardware.Cross;
import cablewright.simulator.cable.hardware.Housing;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.OneSideEarthed;
import cablewright.simulator.cable.hardware.OneSideOpen;
import cablewright.simulator.cable.hardware.SeriesPart;
import cablewright.simulator.cable.hardware.ShuntPart;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.cable.hardware.TouchingConductors;

/** Describes the size of an event in a few words with its numbers. */
public final class EventWords implements EventVisitor<String> {

    private final Words words;

    /**
     * Writes events in given words.
     *
     * @param words the words
     */
    public EventWords(Words words) {
        this.words = words;
    }

    /**
     * Writes an event.
     *
     * @param event the event
     * @return such as "0.12 m, pressed 38 %"
     */
    public String detail(Event event) {
        return visit(event);
    }

    private String say(String key, Object... arguments) {
        return words.texts().say(key, arguments);
    }

    private String ohms(double ohms) {
        return words.quantities().ohms(ohms);
    }

    private static String share(double fraction) {
        return Quantities.number(100 * fraction, 0) + " %";
    }

    private static String scaled(double value, double unit) {
        return Quantities.significant(value / unit);
    }

    @Override
    public String splice(Splice event) {
        return say("detail.splice", scaled(event.excessInductanceHenries(), 1e-9));
    }

    @Override
    public String connector(Connector event) {
        return say(
                "detail.connector",
                ohms(event.impedanceOhms()),
                words.quantities().shortLength(event.lengthMetres()));
    }

    @Override
    public String corrodedJoint(CorrodedJoint event) {
        return say("detail.corroded-joint", ohms(event.seriesResistanceOhms()));
    }

    @Override
    public String tap(Tap event) {
        return say("detail.tap", Quantities.significant(event.throughLossDecibels()));
    }

    @Override
    public String splitter(Splitter event) {
        return say(
                "detail.splitter",
                Quantities.significant(event.throughLossDecibels()),
                Quantities.significant(event.legLossDecibels()));
    }

    @Override
    public String housing(Housing event) {
        return say(
                "detail.housing",
                Quantities.significant(event.throughLossDecibels()),
                scaled(event.lowCornerHertz(), 1e6));
    }

    @Override
    public String bridgedTap(BridgedTap event) {
        return say(
                "detail.bridged-tap",
                words.quantities().shortLength(event.branch().lengthMetres()));
    }

    @Override
    public String loadCoil(LoadCoil event) {
        return say("detail.load-coil", scaled(event.inductanceHenries(), 1e-3));
    }

    @Override
    public String buildOut(BuildOut event) {
        return say("detail.build-out", scaled(event.capacitanceFarads(), 1e-9));
    }

    @Override
    public String brokenConductor(BrokenConductor event) {
        return event.seriesResistanceOhms().isPresent()
                ? say("detail.partial-open", ohms(event.seriesResistanceOhms().getAsDouble()))
                : say("detail.open");
    }

    @Override
    public String touchingConductors(TouchingConductors event) {
        return event.shuntResistanceOhms().isPresent()
                ? say("detail.partial-short", ohms(event.shuntResistanceOhms().getAsDouble()))
                : say("detail.short");
    }

    @Override
    public String oneSideOpen(OneSideOpen event) {
        return say("detail.one-side-open");
    }

    @Override
    public String oneSideEarthed(OneSideEarthed event) {
        return say("detail.one-side-earthed", ohms(event.earthResistanceOhms()));
    }

    @Override
    public String cross(Cross event) {
        return say("detail.cross", ohms(event.contactResistanceOhms()));
    }

    @Override
    public String seriesPart(SeriesPart event) {
        return say("detail.series");
    }

    @Override
    public String shuntPart(ShuntPart event) {
        return say("detail.shunt");
    }

    @Override
    public String pinch(Pinch event) {
        return say("detail.pinch", length(event), share(event.depthFraction()));
    }

    @Override
    public String kink(Kink event) {
        return say("detail.kink", length(event), words.quantities().shortLength(event.bendRadiusMetres()));
    }

    @Override
    public String waterIngress(WaterIngress event) {
        return say("detail.water", length(event), share(event.volumeFraction()), picture(event));
    }

    @Override
    public String offCentreCore(OffCentreCore event) {
        return say("detail.off-centre", length(event), share(event.eccentricity()));
    }

    @Override
    public String gradualDamage(GradualDamage event) {
        return say("detail.gradual-damage", length(event), share(event.relativeImpedance()));
    }

    @Override
    public String spreadPair(SpreadPair event) {
        return say("detail.spread-pair", length(event), Quantities.significant(event.spacingFactor()));
    }

    @Override
    public String split(Split event) {
        String layout = say("splitLayout." + Words.word(event.shape().layout()));
        return say(event.putRight() ? "detail.split" : "detail.split-to-the-end", length(event), layout);
    }

    @Override
    public String impedanceVariation(ImpedanceVariation event) {
        return say("detail.unevenness", length(event), share(event.relativeAmplitude()));
    }

    @Override
    public String heat(Heat event) {
        return say("detail.heat", length(event), Quantities.significant(event.celsius()));
    }

    private String length(LineCondition event) {
        return words.quantities().shortLength(event.lengthMetres());
    }

    /**
     * Says how water lies in the cable: the same share of water gives very different impedances in different pictures.
     *
     * @param wet the event
     * @return such as "a film under the shield"
     */
    public String picture(WaterIngress wet) {
        return say("picture." + Words.word(wet.picture()));
    }
}
