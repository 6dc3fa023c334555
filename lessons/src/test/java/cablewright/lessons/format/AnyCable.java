// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Lumped;
import cablewright.simulator.cable.NeighbourEnd;
import cablewright.simulator.cable.Profile;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.TestLead;
import cablewright.simulator.cable.condition.GradualDamage;
import cablewright.simulator.cable.condition.Heat;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.condition.Kink;
import cablewright.simulator.cable.condition.OffCentreCore;
import cablewright.simulator.cable.condition.Pinch;
import cablewright.simulator.cable.condition.Split;
import cablewright.simulator.cable.condition.SpreadPair;
import cablewright.simulator.cable.condition.WaterIngress;
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
import cablewright.simulator.crosssection.CoaxSection;
import cablewright.simulator.crosssection.ConstantsSection;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.crosssection.DebyeTerm;
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.WaterDistribution;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.crosssection.datasheet.ConductorLayout;
import cablewright.simulator.crosssection.datasheet.DataSheet;
import cablewright.simulator.crosssection.split.SplitLayout;
import cablewright.simulator.crosssection.split.SplitShape;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.DebyeDielectric;
import cablewright.simulator.material.DebyePole;
import cablewright.simulator.material.MixingRule;
import cablewright.simulator.material.Water;
import cablewright.simulator.material.WaterModel;
import cablewright.simulator.material.WetDielectric;
import cablewright.simulator.material.WidebandLog;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;

/** Draws cables of every kind that the model can hold. */
final class AnyCable {

    private static final String TITLE_CHARACTERS = "aé\"\\/Ω😀 z9";

    private final RandomGenerator random;
    private int nextId;

    AnyCable(RandomGenerator random) {
        this.random = random;
    }

    /** A cable of coax, pair or constants, with events that can be done to it. */
    Cable draw() {
        return cable(2);
    }

    private Cable cable(int depth) {
        int make = random.nextInt(3);
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            runs.add(new Run(type(make), 50 + 100 * random.nextDouble()));
        }
        double length = runs.stream().mapToDouble(Run::lengthMetres).sum();
        List<Event> events = new ArrayList<>();
        for (int i = random.nextInt(8); i > 0; i--) {
            events.add(random.nextBoolean() ? thing(length, depth) : condition(make, length));
        }
        if (make == 1 && random.nextBoolean()) {
            events.add(split(length));
        }
        double celsius = make == 2 || random.nextBoolean() ? 20 : -30 + 90 * random.nextDouble();
        Optional<TestLead> lead = random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new TestLead(type(make), 1 + random.nextDouble()));
        return new Cable(title(), runs, events, farEnd(make), celsius, lead);
    }

    private Split split(double length) {
        boolean putRight = random.nextBoolean();
        double from = length / 4;
        SplitLayout[] layouts = SplitLayout.values();
        SplitLayout layout = layouts[random.nextInt(layouts.length)];
        OptionalDouble pitch =
                layout == SplitLayout.QUAD ? OptionalDouble.empty() : OptionalDouble.of(1.2 + 4 * random.nextDouble());
        return new Split(
                id(),
                from,
                putRight ? length / 3 : length - from,
                new SplitShape(layout, pitch),
                putRight,
                NeighbourEnd.values()[random.nextInt(3)],
                NeighbourEnd.values()[random.nextInt(3)]);
    }

    private String title() {
        StringBuilder title = new StringBuilder("T");
        for (int i = random.nextInt(10); i > 0; i--) {
            int[] characters = TITLE_CHARACTERS.codePoints().toArray();
            title.appendCodePoint(characters[random.nextInt(characters.length)]);
        }
        return title.toString();
    }

    private CableType type(int make) {
        if (make == 2) {
            return named("constants", CableFamily.REFERENCE, constants());
        }
        int which = random.nextInt(4);
        if (which == 0) {
            return Catalogue.standard().type(make == 0 ? "drop-6-foam" : "cat-5e");
        }
        if (which == 1) {
            return named("sheet", make == 0 ? CableFamily.COAX_DROP : CableFamily.DATA_PAIR, sheet(make));
        }
        if (which == 2 && make == 0) {
            return named("squeezed", CableFamily.COAX_DROP, sheet(make).pinched(0.2));
        }
        return named("geometry", make == 0 ? CableFamily.COAX_SOLID : CableFamily.TELEPHONE_PAIR, geometry(make));
    }

    /** Each type has an id of its own: two different types of one id can't go into one file. */
    private CableType named(String name, CableFamily family, CrossSection section) {
        String id = name + "-" + nextId++;
        List<AttenuationPoint> published =
                random.nextBoolean() ? List.of() : List.of(new AttenuationPoint(1e6 * (1 + random.nextInt(9)), 0.02));
        return new CableType(id, "Type " + id, family, section, "drawn at random", 75, 0.85, published);
    }

    private ConstantsSection constants() {
        List<DebyeTerm> terms =
                random.nextBoolean() ? List.of() : List.of(new DebyeTerm(1e-12 * random.nextDouble(), 1e-9));
        return new ConstantsSection(random.nextDouble(), 3e-7, 1e-6 * random.nextDouble(), 0, 5e-11, terms);
    }

    private FittedSection sheet(int make) {
        return FittedSection.fitted(new DataSheet(
                make == 0 ? ConductorLayout.COAX : ConductorLayout.PAIR,
                make == 0 ? 75 : 100,
                0.7 + 0.1 * random.nextDouble(),
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(0.1),
                OptionalDouble.empty(),
                List.of(new AttenuationPoint(1e7, 0.02), new AttenuationPoint(1e8, 0.07))));
    }

    private CrossSection geometry(int make) {
        if (make == 1) {
            DebyeDielectric relaxing = new DebyeDielectric(2, List.of(new DebyePole(0.01, 1e-9)), 1e-9);
            return PairSection.solid(5e-4, 9e-4, 9e-4, 1.01, Conductor.COPPER, relaxing, 2.3);
        }
        WidebandLog dry = new WidebandLog(1.4, 1e-4, 1e8, 1e3, 1e12);
        WetDielectric damp = new WetDielectric(dry, MixingRule.LOOYENGA, 0.01 * random.nextDouble(), water());
        return CoaxSection.solid(1e-3, 4.5e-3, Conductor.COPPER, 1e-4, Conductor.ALUMINIUM, damp);
    }

    private FarEnd farEnd(int make) {
        switch (random.nextInt(4)) {
            case 0:
                return new FarEnd.Open();
            case 1:
                return new FarEnd.Short();
            case 2:
                return new FarEnd.Terminated(lumped());
            default:
                return new FarEnd.Endless(type(make));
        }
    }

    private Lumped lumped() {
        Lumped.Joined joined = random.nextBoolean() ? Lumped.Joined.SERIES : Lumped.Joined.PARALLEL;
        return new Lumped(joined, OptionalDouble.of(100 * random.nextDouble()), maybe(1e-6), maybe(1e-9));
    }

    private OptionalDouble maybe(double most) {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(most * (1 - random.nextDouble()));
    }

    private Water water() {
        WaterModel[] models = WaterModel.values();
        return new Water(5 + random.nextInt(30), random.nextDouble(), models[random.nextInt(models.length)]);
    }

    private String id() {
        return "e" + nextId++;
    }

    private Event thing(double length, int depth) {
        double at = length * random.nextDouble();
        double share = 1 - random.nextDouble();
        switch (random.nextInt(depth > 0 ? 16 : 14)) {
            case 0:
                return new Splice(id(), at, 1e-9 * share, 0, share);
            case 1:
                return new Connector(id(), at, 60 + share, 0.02, share);
            case 2:
                return new CorrodedJoint(id(), at, 100 * share, maybe(1e-9));
            case 3:
                return new Tap(id(), at, 75, share, 1e-12 * share, 0);
            case 4:
                return new Housing(id(), at, 75, 3 * share, 1e-12, 5e6);
            case 5:
                return new LoadCoil(id(), at, 0.088, 9 * share, 1e-10);
            case 6:
                return new BuildOut(id(), at, 1e-8 * share, 5);
            case 7:
                return new BrokenConductor(id(), at, maybe(1e6));
            case 8:
                return new TouchingConductors(id(), at, maybe(1e3));
            case 9:
                return new OneSideOpen(
                        id(), at, share < 0.3 ? OptionalDouble.empty() : OptionalDouble.of(1e-11 * share));
            case 10:
                return new SeriesPart(id(), at, lumped());
            case 11:
                return new ShuntPart(id(), at, lumped());
            case 12:
                return new OneSideEarthed(id(), at, 100 * share);
            case 13:
                return new Cross(id(), at, 100 * share);
            case 14:
                return new BridgedTap(id(), at, cable(depth - 1));
            default:
                return new Splitter(id(), at, 75, 3.5 + share, 3.5, 0, cable(depth - 1), random.nextBoolean());
        }
    }

    private Event condition(int make, double length) {
        double from = length * random.nextDouble() / 2;
        double long1 = length * (1 - random.nextDouble()) / 2;
        Profile profile = Profile.values()[random.nextInt(Profile.values().length)];
        double share = 0.9 * (1 - random.nextDouble());
        switch (make == 2 ? random.nextInt(2) : random.nextInt(6)) {
            case 0:
                return new GradualDamage(id(), from, long1, 0.5 + share, profile);
            case 1:
                OptionalLong seed = random.nextBoolean() ? OptionalLong.empty() : OptionalLong.of(random.nextLong());
                return new ImpedanceVariation(id(), from, long1, 0.1 * share, long1 / 7, seed, random.nextBoolean());
            case 2:
                return make == 0 && random.nextBoolean()
                        ? new Kink(id(), from, long1, 0.05 + share, OptionalDouble.of(0.07), profile)
                        : new Pinch(id(), from, long1, share, profile);
            case 3:
                return new Heat(id(), from, long1, 50 * share, 20, profile);
            case 4:
                return new WaterIngress(
                        id(),
                        from,
                        long1,
                        from + long1 / 3,
                        WaterDistribution.CRIM,
                        0.1 * share,
                        water(),
                        long1 * share / 2);
            default:
                return make == 0
                        ? new OffCentreCore(id(), from, long1, share, profile, maybe(1))
                        : new SpreadPair(id(), from, long1, 1 + share, profile);
        }
    }
}
