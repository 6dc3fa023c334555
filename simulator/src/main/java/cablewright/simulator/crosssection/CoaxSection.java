// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.surface.RoundWire;
import cablewright.simulator.crosssection.surface.SurfaceImpedance;
import cablewright.simulator.crosssection.surface.TubeShield;
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
 * Coax: {@code z = s L + Z(core) + Z(shield)}, {@code y = s C eps(s)}.
 *
 * <p>L and C come from {@link CoaxGeometry} (exact also off centre; pressed: a smaller circle touching the far side),
 * the conductors from {@link SurfaceImpedance}, crowded so that both DC resistances stay and the skin-effect loss has
 * the exact factor of eccentric circles. Films of water are layers in series, {@code 1/eps = sum of ln(r_out/r_in)/
 * (eps_layer ln(b/a))}, exact when concentric and taken over when not (a notice says so).
 *
 * <p>Validity: TEM, below the TE11 cutoff {@code c/(pi (a + b) sqrt(er))}.
 *
 * <p>Source: D. M. Pozar, Microwave Engineering, 4th ed., secs. 2.2 and 2.7 (from memory).
 *
 * @param core impedance of the core
 * @param shield impedance of the shield
 * @param dielectric what lies between, at 20 degrees Celsius
 * @param geometry the circles
 * @param surroundings temperature and water
 */
public record CoaxSection(
        SurfaceImpedance core,
        SurfaceImpedance shield,
        Dielectric dielectric,
        CoaxGeometry geometry,
        WetSurroundings surroundings)
        implements CrossSection {

    private static final double STRONG_CROWDING = 2.7;

    // Rejects missing parts.
    public CoaxSection {
        Require.components(CoaxSection.class, core, shield, dielectric, geometry, surroundings);
    }

    /**
     * Even, dry coax at 20 degrees Celsius with a solid core and a tube for a shield.
     *
     * @param coreDiameterMetres d
     * @param outerDiameterMetres D, over the dielectric
     * @param core metal of the core
     * @param wallMetres thickness of the shield
     * @param shield metal of the shield (for a braid: with its apparent conductivity)
     * @param dielectric what lies between
     * @return the coax
     */
    public static CoaxSection solid(
            double coreDiameterMetres,
            double outerDiameterMetres,
            Conductor core,
            double wallMetres,
            Conductor shield,
            Dielectric dielectric) {
        return of(
                new RoundWire(0.5 * coreDiameterMetres, core),
                coreDiameterMetres,
                new TubeShield(0.5 * outerDiameterMetres, wallMetres, shield),
                outerDiameterMetres,
                dielectric);
    }

    /**
     * Even, dry coax at 20 degrees Celsius of any conductors.
     *
     * @param core impedance of the core
     * @param coreDiameterMetres d
     * @param shield impedance of the shield
     * @param outerDiameterMetres D
     * @param dielectric what lies between
     * @return the coax
     */
    public static CoaxSection of(
            SurfaceImpedance core,
            double coreDiameterMetres,
            SurfaceImpedance shield,
            double outerDiameterMetres,
            Dielectric dielectric) {
        CoaxGeometry geometry = new CoaxGeometry(coreDiameterMetres, outerDiameterMetres);
        return new CoaxSection(core, shield, dielectric, geometry, WetSurroundings.DRY);
    }

    @Override
    public void primaryConstants(ContourSamples contour, PrimaryConstants out) {
        out.startWithInductance(contour, geometry.inductanceHenriesPerMetre());
        addConductors(out, contour);
        double farads = geometry.vacuumCapacitanceFaradsPerMetre();
        surroundings.drySusceptance(dielectric, contour).ifPresentOrElse(dry -> out.setCapacitance(farads, dry), () -> {
            Samples eps = permittivity(contour);
            out.setCapacitance(contour, farads, eps.re, eps.im);
        });
    }

    private void addConductors(PrimaryConstants out, ContourSamples contour) {
        SurfaceImpedance warmCore = surroundings.warmed(core);
        SurfaceImpedance warmShield = surroundings.warmed(shield);
        double share = geometry.excessShare();
        double coreFactor = geometry.coreCrowding();
        double outerFactor = geometry.outerCrowding();
        ProximityEffect.addWire(out, contour, warmCore, coreFactor, 0.5 * share * (coreFactor - 1), 1);
        double outerExcess = 0.5 * share * (outerFactor - 1);
        ProximityEffect.addTube(out, contour, warmShield, outerFactor, outerExcess, geometry.outerShortening());
    }

    private Samples permittivity(ContourSamples contour) {
        Samples eps = surroundings.mixed(dielectric, contour);
        double a2 = geometry.coreDiameterMetres() * geometry.coreDiameterMetres();
        double b2 = geometry.outerDiameterMetres() * geometry.outerDiameterMetres();
        double whole = Math.log(b2 / a2);
        double inner = Math.log1p(surroundings.filmFraction(WaterDistribution.FILM_ON_CORE) * (b2 - a2) / a2) / whole;
        double outer =
                -Math.log1p(-surroundings.filmFraction(WaterDistribution.FILM_UNDER_SHIELD) * (b2 - a2) / b2) / whole;
        if (inner == 0 && outer == 0) {
            return eps;
        }
        double dry = Math.max(0, 1 - inner - outer);
        Samples elastance = new Samples(contour.size());
        addLayer(elastance, eps, dry);
        surroundings.film(WaterDistribution.FILM_ON_CORE).ifPresent(s -> addLayer(elastance, water(s, contour), inner));
        surroundings
                .film(WaterDistribution.FILM_UNDER_SHIELD)
                .ifPresent(s -> addLayer(elastance, water(s, contour), outer));
        Samples layered = new Samples(contour.size());
        addLayer(layered, elastance, 1);
        return layered;
    }

    private static Samples water(WaterContent soak, ContourSamples contour) {
        return contour.of(soak.water().dielectric());
    }

    /** Adds weight/eps to the sum. */
    private static void addLayer(Samples sum, Samples eps, double weight) {
        for (int i = 0; i < sum.re.length; i++) {
            double scale = weight / (eps.re[i] * eps.re[i] + eps.im[i] * eps.im[i]);
            sum.re[i] += scale * eps.re[i];
            sum.im[i] -= scale * eps.im[i];
        }
    }

    private double referencePermittivity() {
        double[] omega = {2 * Math.PI * REFERENCE_FREQUENCY_HERTZ};
        return permittivity(new ContourSamples(new double[1], omega)).re[0];
    }

    @Override
    public double loopResistanceOhmsPerMetre() {
        return core.atTemperature(surroundings.celsius()).dcResistanceOhmsPerMetre()
                + shield.atTemperature(surroundings.celsius()).dcResistanceOhmsPerMetre();
    }

    @Override
    public double impedanceOhms() {
        return PhysicalConstants.ETA_0 / (2 * Math.PI) * geometry.shape() / Math.sqrt(referencePermittivity());
    }

    @Override
    public double velocityFraction() {
        return 1 / Math.sqrt(referencePermittivity());
    }

    @Override
    public CoaxSection pinched(double depthFraction) {
        return with(geometry.pressed(depthFraction));
    }

    @Override
    public CoaxSection offCentre(double eccentricity) {
        return with(geometry.shifted(eccentricity));
    }

    @Override
    public CoaxSection scaled(double relativeImpedance) {
        Require.between("relativeImpedance", relativeImpedance, 0.05, 20);
        return with(geometry.scaled(relativeImpedance));
    }

    private CoaxSection with(CoaxGeometry changed) {
        return new CoaxSection(core, shield, dielectric, changed, surroundings);
    }

    @Override
    public CoaxSection spread(double spacingFactor) {
        throw new IllegalArgumentException(
                "spacingFactor is " + spacingFactor
                        + ", but a coax has no pair of wires to spread; use this on a pair, or an off-centre core or a pinch here.");
    }

    @Override
    public CoaxSection wet(WaterDistribution picture, double volumeFraction, Water water) {
        WetSurroundings wetter = surroundings.with(new WaterContent(picture, volumeFraction, water));
        double films = wetter.filmFraction(WaterDistribution.FILM_ON_CORE)
                + wetter.filmFraction(WaterDistribution.FILM_UNDER_SHIELD);
        Require.that(
                films <= 1, "volumeFraction", volumeFraction, "what keeps both films together within 1, not " + films);
        return new CoaxSection(core, shield, dielectric, geometry, wetter);
    }

    @Override
    public CoaxSection atTemperature(double celsius) {
        return new CoaxSection(core, shield, dielectric, geometry, surroundings.at(celsius));
    }

    @Override
    public SectionDrawing drawing() {
        List<WaterContent> soaks = surroundings.soaks();
        Optional<WaterDistribution> picture = soaks.isEmpty()
                ? Optional.empty()
                : Optional.of(soaks.get(soaks.size() - 1).picture());
        double unpressedOffset = geometry.offsetMetres() - 0.5 * geometry.pressedDepthMetres();
        return new SectionDrawing.Coax(
                geometry.coreDiameterMetres(),
                geometry.outerDiameterMetres(),
                unpressedOffset,
                geometry.pressedDepthMetres(),
                surroundings.wetFraction(),
                picture);
    }

    @Override
    public List<Notice> notices(double highestFrequencyHertz) {
        List<Notice> notices = new ArrayList<>();
        double middle = 0.5 * (geometry.coreDiameterMetres() + geometry.outerDiameterMetres());
        double cutoff = PhysicalConstants.LIGHT_METRES_PER_SECOND * velocityFraction() / (Math.PI * middle);
        if (highestFrequencyHertz > cutoff) {
            notices.add(new Notice(NoticeKind.HIGHER_MODES, highestFrequencyHertz, cutoff));
        }
        if (shield instanceof TubeShield tube) {
            double depth = tube.conductor().skinDepthMetres(highestFrequencyHertz);
            if (tube.wallMetres() < depth) {
                notices.add(new Notice(NoticeKind.THIN_SHIELD, tube.wallMetres(), depth));
            }
        }
        double crowding = geometry.outerCrowding();
        if (crowding > STRONG_CROWDING) {
            notices.add(new Notice(NoticeKind.STRONG_CROWDING, crowding, STRONG_CROWDING));
        }
        double offset = geometry.offsetMetres();
        if (offset > 0
                && surroundings.soaks().stream().anyMatch(s -> s.picture().isFilm())) {
            notices.add(new Notice(NoticeKind.FILM_ON_OFF_CENTRE_CORE, offset, 0));
        }
        return List.copyOf(notices);
    }
}
