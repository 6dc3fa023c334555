// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Between;
import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.surface.RoundWire;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.Dielectric;
import cablewright.simulator.material.PhysicalConstants;
import cablewright.simulator.material.Water;
import cablewright.simulator.notice.Notice;
import cablewright.simulator.notice.NoticeKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pair of wires: {@code z = k (s L + 2 Zw)}, {@code y = k s C eps(s)}, k metres of wire per metre of cable.
 *
 * <p>L and C come from {@link PairGeometry}, the wires from {@link SurfaceImpedance} with the proximity effect added
 * so that resistance and inductance are exact at DC, resistance exact at skin effect, and all causal. The
 * permittivity is an effective one, of insulation and air together, fitted to the velocity.
 *
 * <p>Spread: the wires stand apart in air, each in its coat. With A(s) = acosh(s/d), the effective permittivity goes
 * as {@code 1/eps = 1 + (phi/A)(1/ei - 1)}, where phi is the share of the way between the wires that lies in plastic:
 * phi0 as made, from {@code eps(s0)}; ln(D/d) of the coat alone when far apart (exact for thin wires); in between
 * {@code phi = ln(D/d) + (phi0 - ln(D/d)) (s0/s)^3}. So impedance and velocity both rise. Pressed closer, phi/A
 * stays.
 *
 * <p>Source: D. M. Pozar, Microwave Engineering, 4th ed., table 2.1 (from memory); the spread law is derived here
 * from its two limits, the cube chosen by a field solution of two coated wires (the impedance is then within 2 %,
 * tested).
 *
 * @param wire impedance of one wire
 * @param effectiveDielectric insulation and air together, at 20 degrees Celsius
 * @param insulationPermittivity ei of the coat alone, at least the effective one at the reference frequency
 * @param geometry the wires
 * @param surroundings temperature and water
 */
public record PairSection(
        SurfaceImpedance wire,
        Dielectric effectiveDielectric,
        @Between(least = 1) double insulationPermittivity,
        PairGeometry geometry,
        WetSurroundings surroundings)
        implements CrossSection {

    private static final double STRONG_CROWDING = 1.8;

    // Checks the ranges.
    public PairSection {
        Require.components(
                PairSection.class, wire, effectiveDielectric, insulationPermittivity, geometry, surroundings);
        double effective = effectiveDielectric.realPermittivityAt(REFERENCE_FREQUENCY_HERTZ);
        Require.atLeast("insulationPermittivity", insulationPermittivity, effective);
    }

    /**
     * Even, dry pair of solid wires at 20 degrees Celsius.
     *
     * @param wireDiameterMetres d
     * @param spacingMetres distance of centres
     * @param insulationDiameterMetres over the insulation of one wire
     * @param takeUp metres of wire per metre of cable
     * @param conductor metal of the wires
     * @param effectiveDielectric insulation and air together
     * @param insulationPermittivity permittivity of the insulation alone
     * @return the pair
     */
    public static PairSection solid(
            double wireDiameterMetres,
            double spacingMetres,
            double insulationDiameterMetres,
            double takeUp,
            Conductor conductor,
            Dielectric effectiveDielectric,
            double insulationPermittivity) {
        PairGeometry geometry = new PairGeometry(
                wireDiameterMetres,
                spacingMetres,
                spacingMetres,
                insulationDiameterMetres,
                takeUp,
                1,
                Optional.empty());
        RoundWire wire = new RoundWire(0.5 * wireDiameterMetres, conductor);
        return new PairSection(wire, effectiveDielectric, insulationPermittivity, geometry, WetSurroundings.DRY);
    }

    /**
     * Puts the pair among others of its kind.
     *
     * @param bundle the pairs of the cable
     * @return the pair among them
     */
    public PairSection among(PairBundle bundle) {
        return with(geometry.among(bundle));
    }

    @Override
    public void primaryConstants(ContourSamples contour, PrimaryConstants out) {
        out.startWithInductance(contour, geometry.inductanceHenriesPerMetre());
        SurfaceImpedance warm = surroundings.warmed(wire);
        double others = geometry.neighbourCrowding();
        ProximityEffect.addWire(out, contour, warm, geometry.ownCrowding() + others, geometry.excess(others), 2);
        double farads = geometry.vacuumCapacitanceFaradsPerMetre();
        Optional<Samples> dry =
                plasticShare() == 1 ? surroundings.drySusceptance(effectiveDielectric, contour) : Optional.empty();
        if (dry.isPresent()) {
            out.setCapacitance(farads, dry.get());
        } else {
            Samples eps = permittivity(contour);
            out.setCapacitance(contour, farads, eps.re, eps.im);
        }
        out.lengthen(geometry.takeUp());
    }

    private Samples permittivity(ContourSamples contour) {
        Samples eps = surroundings.mixed(effectiveDielectric, contour);
        double fill = plasticShare();
        if (fill == 1) {
            return eps;
        }
        ComplexBlock values = new ComplexBlock(eps.re, eps.im);
        values.over(new ComplexBlock(values.count()).setScaled(values, 1 - fill).plus(fill));
        return eps;
    }

    /** Share of the nominal effective dielectric on the way between the wires: (phi/A)/(phi0/A0), 1 unless spread. */
    private double plasticShare() {
        double nearer = geometry.nominalSpacingMetres() / geometry.spacingMetres();
        double effective = effectiveDielectric.realPermittivityAt(REFERENCE_FREQUENCY_HERTZ);
        if (nearer >= 1 || effective <= 1) {
            return 1;
        }
        double made = geometry.nominalShape() * (1 - 1 / effective) / (1 - 1 / insulationPermittivity);
        double coat = Math.min(made, Math.log(geometry.insulationDiameterMetres() / geometry.wireDiameterMetres()));
        double phi = coat + (made - coat) * nearer * nearer * nearer;
        return phi / made * geometry.nominalShape() / geometry.bareShape();
    }

    private double referencePermittivity() {
        double[] omega = {2 * Math.PI * REFERENCE_FREQUENCY_HERTZ};
        return permittivity(new ContourSamples(new double[1], omega)).re[0];
    }

    @Override
    public double loopResistanceOhmsPerMetre() {
        SurfaceImpedance warm = wire.atTemperature(surroundings.celsius());
        return 2 * geometry.takeUp() * warm.dcResistanceOhmsPerMetre();
    }

    @Override
    public double impedanceOhms() {
        return PhysicalConstants.ETA_0 / Math.PI * geometry.shape() / Math.sqrt(referencePermittivity());
    }

    @Override
    public double velocityFraction() {
        return 1 / (geometry.takeUp() * Math.sqrt(referencePermittivity()));
    }

    @Override
    public PairSection pinched(double depthFraction) {
        return with(geometry.pressed(depthFraction));
    }

    @Override
    public PairSection offCentre(double eccentricity) {
        throw new IllegalArgumentException("eccentricity is " + eccentricity
                + ", but a pair has no core to lie off centre; use this on a coax, or pinch or spread the pair.");
    }

    @Override
    public PairSection spread(double spacingFactor) {
        return with(geometry.spread(spacingFactor));
    }

    @Override
    public PairSection scaled(double relativeImpedance) {
        Require.between("relativeImpedance", relativeImpedance, 0.05, 20);
        return with(geometry.scaled(relativeImpedance));
    }

    private PairSection with(PairGeometry changed) {
        return new PairSection(wire, effectiveDielectric, insulationPermittivity, changed, surroundings);
    }

    @Override
    public PairSection wet(WaterDistribution picture, double volumeFraction, Water water) {
        if (picture.isFilm()) {
            throw new IllegalArgumentException("picture is " + picture
                    + ", which is a layer in a coax; for a pair choose one of the mixing pictures, such as CRIM.");
        }
        WetSurroundings wetter = surroundings.with(new WaterContent(picture, volumeFraction, water));
        return new PairSection(wire, effectiveDielectric, insulationPermittivity, geometry, wetter);
    }

    @Override
    public PairSection atTemperature(double celsius) {
        return new PairSection(wire, effectiveDielectric, insulationPermittivity, geometry, surroundings.at(celsius));
    }

    @Override
    public SectionDrawing drawing() {
        return new SectionDrawing.Pair(
                geometry.wireDiameterMetres(),
                geometry.spacingMetres(),
                geometry.insulationDiameterMetres(),
                surroundings.wetFraction());
    }

    @Override
    public List<Notice> notices(double highestFrequencyHertz) {
        List<Notice> notices = new ArrayList<>();
        double limit = 0.1 * PhysicalConstants.LIGHT_METRES_PER_SECOND * velocityFraction() / geometry.spacingMetres();
        if (highestFrequencyHertz > limit) {
            notices.add(new Notice(NoticeKind.PAIR_RADIATES, highestFrequencyHertz, limit));
        }
        double crowding = geometry.ownCrowding();
        if (crowding > STRONG_CROWDING) {
            notices.add(new Notice(NoticeKind.STRONG_CROWDING, crowding, STRONG_CROWDING));
        }
        return List.copyOf(notices);
    }
}
