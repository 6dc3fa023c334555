// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The cable itself: its title, its runs, what it ends in, how warm it is and the lead before it. */
public final class CableViewModel {

    private static final double NEW_RUN_METRES = 50;
    private static final double USUAL_LEAD_METRES = 2;

    private final DocumentViewModel document;
    private final Texts texts;

    /** What a line can end in. */
    public enum End {
        /** Nothing joined. */
        OPEN,
        /** Conductors touching. */
        SHORT,
        /** A resistor across. */
        RESISTOR,
        /** Some other load, as a file gave it. */
        LOAD,
        /** More cable without end. */
        GOES_ON
    }

    CableViewModel(DocumentViewModel document, Texts texts) {
        this.document = document;
        this.texts = texts;
    }

    public Cable cable() {
        return document.now().cable();
    }

    private Optional<String> step(String key, UnaryOperator<Cable> edit) {
        return document.step(texts.say(key), before -> before.built(edit));
    }

    private Optional<String> move(String key, String movement, UnaryOperator<Cable> edit) {
        return document.move(texts.say(key), movement, before -> before.built(edit));
    }

    /** Ends what a hand was on. */
    public void done() {
        document.endMovement();
    }

    public Optional<String> title(String title) {
        return title.equals(cable().title())
                ? Optional.empty()
                : step("do.title", cable -> CableEdits.withTitle(cable, title));
    }

    /** The types to choose from: the catalogue, and what the cable is made of where that is not in it. */
    public List<CableType> types() {
        List<CableType> types = new ArrayList<>(Catalogue.standard().types());
        cable().runs().stream()
                .map(Run::type)
                .distinct()
                .filter(type -> !types.contains(type))
                .forEach(type -> types.add(0, type));
        return types;
    }

    public Optional<String> runType(int index, CableType type) {
        Run run = cable().runs().get(index);
        return run.type().equals(type) ? Optional.empty() : step("do.runType", cable -> ofType(cable, index, type));
    }

    /** A resistor that matched the last run matches it still, whatever type it is now. */
    private static Cable ofType(Cable cable, int index, CableType type) {
        CableType last = lastType(cable);
        Run run = cable.runs().get(index);
        Cable changed = CableEdits.withRun(cable, index, new Run(type, run.lengthMetres()));
        boolean matched = cable.farEnd().equals(made(End.RESISTOR, cable));
        boolean isLast = !lastType(changed).equals(last);
        return matched && isLast ? CableEdits.withFarEnd(changed, made(End.RESISTOR, changed)) : changed;
    }

    private static CableType lastType(Cable cable) {
        return cable.runs().get(cable.runs().size() - 1).type();
    }

    public Optional<String> runLength(int index, double metres) {
        return move("do.runLength", "run/" + index, cable -> {
            Run run = cable.runs().get(index);
            return CableEdits.withRun(cable, index, new Run(run.type(), metres));
        });
    }

    public Optional<String> addRun(int after) {
        return step("do.addRun", cable -> {
            Run run = cable.runs().get(after);
            return CableEdits.withRunAfter(cable, after, new Run(run.type(), NEW_RUN_METRES));
        });
    }

    public Optional<String> removeRun(int index) {
        return step("do.removeRun", cable -> CableEdits.withoutRun(cable, index));
    }

    public End end() {
        FarEnd end = cable().farEnd();
        if (end instanceof FarEnd.Open) {
            return End.OPEN;
        }
        if (end instanceof FarEnd.Short) {
            return End.SHORT;
        }
        if (end instanceof FarEnd.Endless) {
            return End.GOES_ON;
        }
        return endOhms().isPresent() ? End.RESISTOR : End.LOAD;
    }

    /** The resistor at the end [Ω]; empty where there is none, or more than one. */
    public Optional<Double> endOhms() {
        if (!(cable().farEnd() instanceof FarEnd.Terminated)) {
            return Optional.empty();
        }
        Lumped load = ((FarEnd.Terminated) cable().farEnd()).load();
        boolean resistive = load.resistanceOhms().isPresent()
                && load.inductanceHenries().isEmpty()
                && load.capacitanceFarads().isEmpty();
        return resistive ? Optional.of(load.resistanceOhms().getAsDouble()) : Optional.empty();
    }

    public Optional<String> end(End end) {
        if (end == end() || end == End.LOAD) {
            return Optional.empty();
        }
        return step("do.end", cable -> CableEdits.withFarEnd(cable, made(end, cable)));
    }

    private static FarEnd made(End end, Cable cable) {
        CableType last = lastType(cable);
        switch (end) {
            case OPEN:
                return new FarEnd.Open();
            case SHORT:
                return new FarEnd.Short();
            case GOES_ON:
                return new FarEnd.Endless(last);
            default:
                return FarEnd.Terminated.byOhms(Math.rint(last.nominalImpedanceOhms()));
        }
    }

    public Optional<String> endOhms(double ohms) {
        return move("do.endOhms", "end", cable -> CableEdits.withFarEnd(cable, FarEnd.Terminated.byOhms(ohms)));
    }

    public Optional<String> celsius(double celsius) {
        return move("do.celsius", "celsius", cable -> CableEdits.withCelsius(cable, celsius));
    }

    public Optional<String> hasLead(boolean has) {
        return step(
                "do.lead",
                cable -> CableEdits.withTestLead(
                        cable,
                        has
                                ? Optional.of(new TestLead(cable.runs().get(0).type(), USUAL_LEAD_METRES))
                                : Optional.empty()));
    }

    public Optional<String> leadType(CableType type) {
        return step(
                "do.lead",
                cable -> CableEdits.withTestLead(
                        cable, cable.testLead().map(lead -> new TestLead(type, lead.lengthMetres()))));
    }

    public Optional<String> leadLength(double metres) {
        return move(
                "do.lead",
                "lead",
                cable -> CableEdits.withTestLead(
                        cable, cable.testLead().map(lead -> new TestLead(lead.type(), metres))));
    }
}
