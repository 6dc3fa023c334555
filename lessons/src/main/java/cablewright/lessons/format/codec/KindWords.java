// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.FarEnd;
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
import cablewright.simulator.crosssection.FittedSection;
import cablewright.simulator.crosssection.PairSection;
import cablewright.simulator.crosssection.datasheet.DataSheet;
import cablewright.simulator.crosssection.surface.CladWire;
import cablewright.simulator.crosssection.surface.FittedSurface;
import cablewright.simulator.crosssection.surface.FoilAndBraid;
import cablewright.simulator.crosssection.surface.RoundWire;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.crosssection.surface.TubeShield;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.DebyeDielectric;
import cablewright.simulator.material.Dielectric;
import cablewright.simulator.material.WarmedDielectric;
import cablewright.simulator.material.WetDielectric;
import cablewright.simulator.material.WidebandLog;
import cablewright.simulator.wave.GaussianPulse;
import cablewright.simulator.wave.GaussianStep;
import cablewright.simulator.wave.HalfSine;
import cablewright.simulator.wave.RaisedCosineStep;
import cablewright.simulator.wave.RectangularPulse;
import cablewright.simulator.wave.Stimulus;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The words of the field "kind" for each sealed family. A new record of a family gets its word here and nothing else in this
 * package.
 */
final class KindWords {

    private static final String SAY_FULL =
            "a full one has no resistance: leave it out, or say \"partial-open\" or \"partial-short\"";
    private static final String SAY_PARTIAL = "a partial one needs its resistance in ohms";

    private KindWords() {}

    static Map<Class<?>, List<Variant>> families() {
        return Map.of(
                Event.class, events(),
                FarEnd.class, farEnds(),
                Stimulus.class, stimuli(),
                CrossSection.class, sections(),
                SurfaceImpedance.class, surfaces(),
                Dielectric.class, dielectrics());
    }

    private static List<Variant> events() {
        return List.of(
                Variant.of("splice", Splice.class),
                Variant.of("connector", Connector.class),
                Variant.of("corroded-joint", CorrodedJoint.class),
                Variant.of("tap", Tap.class),
                Variant.of("splitter", Splitter.class),
                Variant.of("housing", Housing.class),
                Variant.of("bridged-tap", BridgedTap.class),
                Variant.of("load-coil", LoadCoil.class),
                Variant.of("build-out", BuildOut.class),
                byKind(
                        EventKind.OPEN,
                        BrokenConductor.class,
                        SAY_FULL,
                        new Variant.Fixed("seriesResistanceOhms", false)),
                byKind(
                        EventKind.PARTIAL_OPEN,
                        BrokenConductor.class,
                        SAY_PARTIAL,
                        new Variant.Fixed("seriesResistanceOhms", true)),
                byKind(
                        EventKind.SHORT,
                        TouchingConductors.class,
                        SAY_FULL,
                        new Variant.Fixed("shuntResistanceOhms", false)),
                byKind(
                        EventKind.PARTIAL_SHORT,
                        TouchingConductors.class,
                        SAY_PARTIAL,
                        new Variant.Fixed("shuntResistanceOhms", true)),
                Variant.of("one-side-open", OneSideOpen.class),
                Variant.of("one-side-earthed", OneSideEarthed.class),
                Variant.of("cross", Cross.class),
                Variant.of("series-element", SeriesPart.class),
                Variant.of("shunt-element", ShuntPart.class),
                Variant.of("pinch", Pinch.class),
                Variant.of("kink", Kink.class),
                Variant.of("water", WaterIngress.class),
                Variant.of("off-centre", OffCentreCore.class),
                Variant.of("gradual-damage", GradualDamage.class),
                Variant.of("spread-pair", SpreadPair.class),
                Variant.of("split", Split.class),
                Variant.of("unevenness", ImpedanceVariation.class),
                Variant.of("heat", Heat.class));
    }

    private static Variant byKind(EventKind kind, Class<? extends Record> type, String otherwise, Variant.Fixed fixed) {
        return Variant.only(kind.id(), type, value -> ((Event) value).kind() == kind, otherwise, Optional.of(fixed));
    }

    private static List<Variant> farEnds() {
        return List.of(
                Variant.of("open", FarEnd.Open.class),
                Variant.of("short", FarEnd.Short.class),
                Variant.of("terminated", FarEnd.Terminated.class),
                Variant.of("endless", FarEnd.Endless.class));
    }

    private static List<Variant> stimuli() {
        return List.of(
                Variant.of("half-sine", HalfSine.class),
                Variant.of("rectangular-pulse", RectangularPulse.class),
                Variant.of("gaussian-pulse", GaussianPulse.class),
                Variant.of("raised-cosine-step", RaisedCosineStep.class),
                Variant.of("gaussian-step", GaussianStep.class));
    }

    private static List<Variant> sections() {
        return List.of(
                Variant.of("constants", ConstantsSection.class),
                Variant.of("coax", CoaxSection.class),
                Variant.of("pair", PairSection.class),
                dataSheet(),
                Variant.of("data-sheet-changed", FittedSection.class));
    }

    /** A section fitted to a data sheet is stored as the sheet alone; the fit is repeated. */
    private static Variant dataSheet() {
        return new Variant(
                "data-sheet",
                DataSheet.class,
                value ->
                        value instanceof FittedSection section && section.equals(FittedSection.fitted(section.sheet())),
                "",
                value -> ((FittedSection) value).sheet(),
                value -> FittedSection.fitted((DataSheet) value),
                Optional.empty());
    }

    private static List<Variant> surfaces() {
        return List.of(
                Variant.of("round-wire", RoundWire.class),
                Variant.of("clad-wire", CladWire.class),
                Variant.of("tube-shield", TubeShield.class),
                Variant.of("foil-and-braid", FoilAndBraid.class),
                Variant.of("fitted-surface", FittedSurface.class));
    }

    private static List<Variant> dielectrics() {
        return List.of(
                Variant.of("constant-loss-tangent", ConstantLossTangent.class),
                Variant.of("wideband-log", WidebandLog.class),
                Variant.of("relaxations", DebyeDielectric.class),
                Variant.of("warmed", WarmedDielectric.class),
                Variant.of("wet", WetDielectric.class));
    }
}
