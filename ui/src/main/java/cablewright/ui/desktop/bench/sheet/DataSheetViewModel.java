// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.sheet;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.edit.CableEdits;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.text.Texts;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Run;
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.crosssection.datasheet.DataSheet;
import cablewright.simulator.line.CableFamily;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.desktop.bench.document.DocumentViewModel;
import cablewright.ui.desktop.task.LatestRun;
import cablewright.ui.desktop.task.Threads;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** A maker's data sheet being typed, the cable type that is fitted to it, and the run that is made of that type. */
final class DataSheetViewModel {

    private static final int LEAST_POINTS = 2;
    private static final int CURVE_POINTS = 60;
    private static final double BEYOND = 1.6;

    private final DocumentViewModel document;
    private final Texts texts;
    private final LatestRun fits;
    private final List<Point> points = new ArrayList<>();
    private final ReadOnlyObjectWrapper<Optional<Fitted>> fitted = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
    private String title;
    private CableFamily family = CableFamily.COAX_DROP;
    private OptionalDouble impedanceOhms = OptionalDouble.of(75);
    private OptionalDouble velocityFraction = OptionalDouble.of(0.85);
    private OptionalDouble loopOhmsPerMetre = OptionalDouble.empty();
    private OptionalDouble insulationMetres = OptionalDouble.empty();
    private boolean loopIsSound = true;
    private boolean insulationIsSound = true;
    private double decibelPerMetre = 0.01;

    DataSheetViewModel(DocumentViewModel document, Threads threads, Texts texts) {
        this.document = document;
        this.texts = texts;
        this.fits = new LatestRun(threads);
        this.title = texts.say("sheet.first");
    }

    /** One attenuation of the sheet as far as it is typed; it is left out while a part is missing. */
    static final class Point {
        private OptionalDouble hertz = OptionalDouble.empty();
        private OptionalDouble written = OptionalDouble.empty();
    }

    /**
     * A type that was fitted.
     *
     * @param type the type
     * @param section its section, with sheet and fit
     * @param curve what the fit gives between and around the sheet's frequencies
     */
    record Fitted(CableType type, FittedSection section, List<AttenuationPoint> curve) {}

    Texts texts() {
        return texts;
    }

    DocumentViewModel document() {
        return document;
    }

    void title(String now) {
        title = now;
        fit();
    }

    void family(CableFamily now) {
        family = now;
        fit();
    }

    void impedance(OptionalDouble ohms) {
        impedanceOhms = ohms;
        fit();
    }

    void velocity(OptionalDouble fraction) {
        velocityFraction = fraction;
        fit();
    }

    void loopResistance(OptionalDouble ohmsPerMetre, boolean sound) {
        loopOhmsPerMetre = ohmsPerMetre;
        loopIsSound = sound;
        fit();
    }

    void insulation(OptionalDouble metres, boolean sound) {
        insulationMetres = metres;
        insulationIsSound = sound;
        fit();
    }

    /** Says in what attenuations are written; numbers stay as they were typed. */
    void attenuationUnit(double inDecibelPerMetre) {
        decibelPerMetre = inDecibelPerMetre;
        fit();
    }

    Point addPoint() {
        Point point = new Point();
        points.add(point);
        return point;
    }

    void removePoint(Point point) {
        points.remove(point);
        fit();
    }

    void frequency(Point point, OptionalDouble hertz) {
        point.hertz = hertz;
        fit();
    }

    void attenuation(Point point, OptionalDouble written) {
        point.written = written;
        fit();
    }

    private List<AttenuationPoint> sound() {
        List<AttenuationPoint> sound = new ArrayList<>();
        for (Point point : points) {
            if (point.hertz.isPresent() && point.written.isPresent()) {
                sound.add(
                        new AttenuationPoint(point.hertz.getAsDouble(), point.written.getAsDouble() * decibelPerMetre));
            }
        }
        return sound;
    }

    private void fit() {
        List<AttenuationPoint> given = sound();
        boolean isSound = loopIsSound && insulationIsSound && !title.isBlank();
        if (impedanceOhms.isEmpty() || velocityFraction.isEmpty() || !isSound) {
            fail(texts.say("sheet.incomplete"));
        } else if (given.size() < LEAST_POINTS) {
            fail(texts.say("sheet.points", LEAST_POINTS));
        } else {
            Sheet sheet = new Sheet(
                    title,
                    family,
                    impedanceOhms.getAsDouble(),
                    velocityFraction.getAsDouble(),
                    loopOhmsPerMetre,
                    insulationMetres,
                    given);
            fits.ask(
                    () -> fitted(sheet, texts.say("sheet.source")),
                    found -> {
                        fitted.set(Optional.of(found));
                        message.set("");
                    },
                    failure -> fail(String.valueOf(failure.getMessage())));
        }
    }

    private void fail(String why) {
        fits.forget();
        fitted.set(Optional.empty());
        message.set(why);
    }

    /** What is on the sheet. */
    private record Sheet(
            String title,
            CableFamily family,
            double ohms,
            double velocity,
            OptionalDouble loop,
            OptionalDouble insulation,
            List<AttenuationPoint> points) {}

    private static Fitted fitted(Sheet sheet, String source) {
        FittedSection section = FittedSection.fitted(new DataSheet(
                Families.layout(sheet.family()),
                sheet.ohms(),
                sheet.velocity(),
                sheet.loop(),
                sheet.insulation(),
                sheet.points()));
        CableType type = new CableType(
                id(sheet.title()),
                sheet.title(),
                sheet.family(),
                section,
                source,
                sheet.ohms(),
                sheet.velocity(),
                section.sheet().attenuation());
        List<AttenuationPoint> points = section.sheet().attenuation();
        double from = points.get(0).frequencyHertz() / BEYOND;
        double to = points.get(points.size() - 1).frequencyHertz() * BEYOND;
        List<AttenuationPoint> curve = new ArrayList<>();
        for (int i = 0; i < CURVE_POINTS; i++) {
            double hertz = from * Math.pow(to / from, i / (CURVE_POINTS - 1.0));
            curve.add(new AttenuationPoint(hertz, section.attenuationDecibelPerMetreAt(hertz)));
        }
        return new Fitted(type, section, curve);
    }

    /** Lower-case letters, digits and single hyphens, as ids of types are. */
    private static String id(String title) {
        String id = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return id.isEmpty() ? "own-type" : id;
    }

    /** Makes a run of the fitted type; what lies on it stays where it is. */
    void lay(int run) {
        fitted.get().ifPresent(found -> {
            CableType type = named(found.type());
            Optional<String> wrong = document.step(
                    texts.say("sheet.step"),
                    now -> now.withCable(cable -> CableEdits.withRun(
                            cable, run, new Run(type, cable.runs().get(run).lengthMetres()))));
            message.set(wrong.orElseGet(() -> texts.say("sheet.laid", run + 1, type.title())));
        });
    }

    /** A file can't hold two different types of one name: another gets a number. */
    private CableType named(CableType type) {
        String id = type.id();
        for (int number = 2; isTaken(id, type); number++) {
            id = type.id() + "-" + number;
        }
        return new CableType(
                id,
                type.title(),
                type.family(),
                type.section(),
                type.source(),
                type.nominalImpedanceOhms(),
                type.nominalVelocityFraction(),
                type.publishedAttenuation());
    }

    private boolean isTaken(String id, CableType type) {
        BenchDocument now = document.now();
        boolean laid = now.lesson().exercises().stream()
                .map(Exercise::cable)
                .map(Cable::runs)
                .flatMap(List::stream)
                .map(Run::type)
                .anyMatch(other -> other.id().equals(id) && !other.section().equals(type.section()));
        return laid || Catalogue.standard().find(id).isPresent();
    }

    ReadOnlyObjectProperty<Optional<Fitted>> fittedProperty() {
        return fitted.getReadOnlyProperty();
    }

    ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }
}
