// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench;

import cablewright.lessons.bench.edit.BenchChoices;
import cablewright.lessons.bench.edit.BenchTexts;
import cablewright.lessons.bench.edit.ExerciseEdits;
import cablewright.lessons.bench.edit.FreshNames;
import cablewright.lessons.bench.edit.RecordEdits;
import cablewright.lessons.exercise.Caution;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.cable.condition.ImpedanceVariation;
import cablewright.simulator.cable.hardware.Connector;
import cablewright.simulator.cable.hardware.LoadCoil;
import cablewright.simulator.cable.hardware.Splice;
import cablewright.simulator.cable.hardware.Tap;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;

/**
 * Sound lines to start from, each an exercise with its record: the instructor puts damage on. All of them lie in Saltmarsh
 * Point and are invented; sizes of hardware are common practice, no source.
 */
public enum BenchTemplate {
    /** Nothing but cable. */
    PLAIN_CABLE {
        @Override
        Exercise make(BenchTexts texts) {
            Cable cable = cable(title(texts), List.of(run("drop-6-foam", 100)), List.of(), terminated("drop-6-foam"));
            return exercise("new-line", title(texts), brief(texts), List.of(Caution.LOCAL_CODES), cable, texts);
        }
    },
    /** Plant coax along a street, with a tap at every few houses. */
    STREET_OF_TAPS {
        @Override
        Exercise make(BenchTexts texts) {
            List<Event> events = new ArrayList<>();
            for (int i = 0; i < TAP_METRES.length; i++) {
                events.add(new Tap("tap" + (i + 1), TAP_METRES[i], 75, 0.8 + 0.3 * i, 5e-12, 0));
            }
            events.add(new Splice("splice1", 97, 8e-9, 0, 0.01));
            Cable cable = cable(title(texts), List.of(run("hardline-500", 230)), events, terminated("hardline-500"));
            return exercise(
                    "net-loft-street",
                    title(texts),
                    brief(texts, BenchTexts.length(230, 0)),
                    List.of(Caution.LIVE_PLANT_POWER, Caution.LIGHTNING, Caution.DIGGING, Caution.LOCAL_CODES),
                    cable,
                    texts);
        }
    },
    /** Coax up a building, with a connector at each floor. */
    BUILDING_RISER {
        @Override
        Exercise make(BenchTexts texts) {
            List<Event> events = new ArrayList<>();
            for (int floor = 1; floor <= FLOORS; floor++) {
                events.add(new Connector("floor" + floor, 4 + 3.2 * floor, 62, 0.04, 0.01));
            }
            Cable cable = cable(title(texts), List.of(run("drop-11-foam", 32)), events, terminated("drop-11-foam"));
            return exercise(
                    "custom-house-riser",
                    title(texts),
                    brief(texts, BenchTexts.length(32, 0)),
                    List.of(Caution.MAINS, Caution.LOCAL_CODES),
                    cable,
                    texts);
        }
    },
    /** A telephone pair with load coils at the usual spacing of 6,000 ft and half a spacing at each end. */
    LOADED_LOOP {
        @Override
        Exercise make(BenchTexts texts) {
            List<Event> events = new ArrayList<>();
            for (int i = 0; i < COILS; i++) {
                double metres = tenths((i + 0.5) * LOAD_SPACING_METRES);
                events.add(new LoadCoil("coil" + (i + 1), metres, 88e-3, 8, 100e-12));
            }
            double length = tenths(COILS * LOAD_SPACING_METRES);
            Cable cable = cable(title(texts), List.of(run("pair-22", length)), events, new FarEnd.Open());
            return exercise(
                    "lighthouse-pair",
                    title(texts),
                    brief(texts, BenchTexts.length(length, 0), BenchTexts.length(LOAD_SPACING_METRES, 0)),
                    List.of(Caution.RINGING_VOLTAGE, Caution.LIGHTNING, Caution.STATIC_CHARGE, Caution.LOCAL_CODES),
                    cable,
                    texts);
        }
    },
    /** A new reel before it is accepted: nothing belongs on it. */
    REEL_ON_THE_FLOOR {
        @Override
        Exercise make(BenchTexts texts) {
            List<Event> events =
                    List.of(new ImpedanceVariation("making", 0, 305, 0.002, 1.5, OptionalLong.of(5), false));
            Cable cable = cable(title(texts), List.of(run("drop-11-foam", 305)), events, new FarEnd.Open());
            return exercise(
                    "reel-214",
                    title(texts),
                    brief(texts, BenchTexts.length(305, 0)),
                    List.of(Caution.STATIC_CHARGE, Caution.LOCAL_CODES),
                    cable,
                    texts);
        }
    };

    private static final double[] TAP_METRES = {28, 64.5, 103, 142, 186.5};
    private static final int FLOORS = 7;
    private static final int COILS = 3;
    private static final double LOAD_SPACING_METRES = 6000 * 0.3048;
    private static final long NOISE_SEED = 20_731;

    abstract Exercise make(BenchTexts texts);

    /**
     * Returns the word of the template.
     *
     * @return lower-case word with hyphens
     */
    public String word() {
        return BenchChoices.word(this);
    }

    /**
     * Makes the document to start from.
     *
     * @param language the language of its texts
     * @return one exercise with a sound line and a correct record
     */
    public BenchDocument document(Locale language) {
        return BenchDocument.of(make(new BenchTexts(language)), language);
    }

    /**
     * Makes the document to start from, with a name in files that no other has: answers to one lesson are then never taken for
     * answers to another.
     *
     * @param language the language of its texts
     * @param random where the name is drawn from
     * @return one exercise with a sound line and a correct record
     */
    public BenchDocument document(Locale language, RandomGenerator random) {
        Exercise made = make(new BenchTexts(language));
        return BenchDocument.of(ExerciseEdits.withId(made, FreshNames.drawn(made.id(), random)), language);
    }

    String title(BenchTexts texts) {
        return texts.say("template." + word() + ".title");
    }

    String brief(BenchTexts texts, Object... arguments) {
        return texts.say("template." + word() + ".brief", arguments);
    }

    private static CableType type(String id) {
        return Catalogue.standard().type(id);
    }

    private static Run run(String typeId, double metres) {
        return new Run(type(typeId), metres);
    }

    private static FarEnd terminated(String typeId) {
        return FarEnd.Terminated.byOhms(Math.rint(type(typeId).nominalImpedanceOhms()));
    }

    private static double tenths(double metres) {
        return Math.rint(metres * 10) / 10;
    }

    private static Cable cable(String title, List<Run> runs, List<Event> events, FarEnd end) {
        return new Cable(title, runs, events, end);
    }

    /**
     * Makes an exercise of a cable alone, as when a cable file is opened.
     *
     * @param id name of the exercise in files
     * @param cable the cable
     * @param language the language of its texts
     * @return the exercise, with a correct record
     */
    public static Exercise around(String id, Cable cable, Locale language) {
        BenchTexts texts = new BenchTexts(language);
        return exercise(
                id,
                cable.title().length() > 200 ? PLAIN_CABLE.title(texts) : cable.title(),
                PLAIN_CABLE.brief(texts),
                List.of(Caution.LOCAL_CODES),
                cable,
                texts);
    }

    private static Exercise exercise(
            String id, String title, String brief, List<Caution> cautions, Cable cable, BenchTexts texts) {
        String invented = texts.say("invented");
        return new Exercise(
                id,
                title,
                brief.isEmpty() ? invented : brief + "\n\n" + invented,
                cautions,
                cable,
                RecordEdits.of(cable, texts),
                UsualView.instrument(cable),
                UsualView.start(cable),
                UsualView.permitted(cable),
                OptionalDouble.empty(),
                List.of(),
                PlainExplanation.of(cable, texts),
                Optional.empty(),
                NOISE_SEED,
                true);
    }
}
