package cablewright.ui.words;

import cablewright.simulator.cable.BridgedTap;
import cablewright.simulator.cable.BrokenConductor;
import cablewright.simulator.cable.BuildOut;
import cablewright.simulator.cable.Connector;
import cablewright.simulator.cable.CorrodedJoint;
import cablewright.simulator.cable.DoneToLine;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventVisitor;
import cablewright.simulator.cable.GradualDamage;
import cablewright.simulator.cable.Heat;
import cablewright.simulator.cable.Housing;
import cablewright.simulator.cable.Kink;
import cablewright.simulator.cable.LoadCoil;
import cablewright.simulator.cable.OffCentreCore;
import cablewright.simulator.cable.OneSideOpen;
import cablewright.simulator.cable.Pinch;
import cablewright.simulator.cable.SeriesPart;
import cablewright.simulator.cable.ShuntPart;
import cablewright.simulator.cable.Splice;
import cablewright.simulator.cable.Split;
import cablewright.simulator.cable.Splitter;
import cablewright.simulator.cable.SpreadPair;
import cablewright.simulator.cable.Tap;
import cablewright.simulator.cable.TouchingConductors;
import cablewright.simulator.cable.Unevenness;
import cablewright.simulator.cable.WaterIngress;

/** Tells how bad or how large an event is, in a few words with its numbers. */
public final class EventWords implements EventVisitor<String> {

    private final Words words;

    /**
     * Tells events in given words.
     *
     * @param words the words
     */
    public EventWords(Words words) {
        this.words = words;
    }

    /**
     * Tells an event.
     *
     * @param event the event
     * @return such as "0.12 m, pressed 38 %"
     */
    public String detail(Event event) {
        return event.accept(this);
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
    public String seriesPart(SeriesPart event) {
        return say("detail.series");
    }

    @Override
    public String shuntPart(ShuntPart event) {
        return say("detail.shunt");
    }

    @Override
    public String condition(DoneToLine event) {
        String length = words.quantities().shortLength(event.lengthMetres());
        if (event instanceof Pinch) {
            return say("detail.pinch", length, share(((Pinch) event).depthFraction()));
        }
        if (event instanceof Kink) {
            return say("detail.kink", length, words.quantities().shortLength(((Kink) event).bendRadiusMetres()));
        }
        if (event instanceof WaterIngress) {
            WaterIngress wet = (WaterIngress) event;
            return say("detail.water", length, share(wet.volumeFraction()), picture(wet));
        }
        if (event instanceof OffCentreCore) {
            return say("detail.off-centre", length, share(((OffCentreCore) event).eccentricity()));
        }
        if (event instanceof GradualDamage) {
            return say("detail.gradual-damage", length, share(((GradualDamage) event).relativeImpedance()));
        }
        if (event instanceof SpreadPair) {
            return say("detail.spread-pair", length, Quantities.significant(((SpreadPair) event).spacingFactor()));
        }
        if (event instanceof Split) {
            return split((Split) event, length);
        }
        if (event instanceof Unevenness) {
            return say("detail.unevenness", length, share(((Unevenness) event).relativeAmplitude()));
        }
        return say("detail.heat", length, Quantities.significant(((Heat) event).celsius()));
    }

    private String split(Split event, String length) {
        String layout = say("splitLayout." + Words.word(event.shape().layout()));
        return say(event.putRight() ? "detail.split" : "detail.split-to-the-end", length, layout);
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
