// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.check.Require;
import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.crosssection.datasheet.DataSheet;
import cablewright.simulator.crosssection.datasheet.DataSheetFit;
import cablewright.simulator.material.Water;
import cablewright.simulator.notice.Notice;
import cablewright.simulator.notice.NoticeKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Cable known by its data sheet, as an equivalent coax or pair: {@code z = s L + sqrt(R^2 + k^2 s)},
 * {@code y = s C (s/w0)^(-2 d/pi)} up to a factor, that is a causal skin effect and a causal constant loss tangent.
 *
 * <p>L and C follow from impedance and velocity, R from the sheet (or a solid copper core), k and the loss tangent
 * from the attenuation by least squares; the {@link DataSheetFit} keeps every residual. The equivalent section has
 * the diameter ratio of impedance and velocity and the size given, or else the size at which smooth copper would have
 * that k, so that a pinch or water can be done to it; a notice then says that the geometry is an equivalent one.
 *
 * @param sheet what the maker says
 * @param fit how well it is met
 * @param equivalent the coax or pair that stands for it, with what was done to it
 * @param conditioned whether anything physical was done to the equivalent section
 */
public record FittedSection(DataSheet sheet, DataSheetFit fit, CrossSection equivalent, boolean conditioned)
        implements CrossSection {

    private static final double GOOD_FIT = 0.05;

    // Rejects missing parts and equivalents that are no geometry.
    public FittedSection {
        Require.components(FittedSection.class, sheet, fit, equivalent, conditioned);
        if (!(equivalent instanceof CoaxSection) && !(equivalent instanceof PairSection)) {
            throw new IllegalArgumentException("equivalent is " + equivalent + "; allowed is a coax or a pair.");
        }
    }

    /**
     * Fits a section to a data sheet.
     *
     * @param sheet what the maker says
     * @return the fitted section
     */
    public static FittedSection fitted(DataSheet sheet) {
        return new DataSheetFitter(sheet).fit();
    }

    private FittedSection with(CrossSection changed) {
        return new FittedSection(sheet, fit, changed, true);
    }

    @Override
    public void primaryConstants(ContourSamples contour, PrimaryConstants out) {
        equivalent.primaryConstants(contour, out);
    }

    @Override
    public double impedanceOhms() {
        return equivalent.impedanceOhms();
    }

    @Override
    public double velocityFraction() {
        return equivalent.velocityFraction();
    }

    @Override
    public double loopResistanceOhmsPerMetre() {
        return equivalent.loopResistanceOhmsPerMetre();
    }

    @Override
    public FittedSection pinched(double depthFraction) {
        return with(equivalent.pinched(depthFraction));
    }

    @Override
    public FittedSection offCentre(double eccentricity) {
        return with(equivalent.offCentre(eccentricity));
    }

    @Override
    public FittedSection wet(WaterDistribution picture, double volumeFraction, Water water) {
        return with(equivalent.wet(picture, volumeFraction, water));
    }

    @Override
    public FittedSection atTemperature(double celsius) {
        return new FittedSection(sheet, fit, equivalent.atTemperature(celsius), conditioned);
    }

    @Override
    public FittedSection spread(double spacingFactor) {
        return with(equivalent.spread(spacingFactor));
    }

    @Override
    public FittedSection scaled(double relativeImpedance) {
        return new FittedSection(sheet, fit, equivalent.scaled(relativeImpedance), conditioned);
    }

    @Override
    public SectionDrawing drawing() {
        return equivalent.drawing();
    }

    @Override
    public List<Notice> notices(double highestFrequencyHertz) {
        List<Notice> notices = new ArrayList<>(equivalent.notices(highestFrequencyHertz));
        List<AttenuationPoint> points = sheet.attenuation();
        double last = points.get(points.size() - 1).frequencyHertz();
        if (highestFrequencyHertz > last) {
            notices.add(new Notice(NoticeKind.ABOVE_FITTED_RANGE, highestFrequencyHertz, last));
        }
        if (fit.relativeRms() > GOOD_FIT) {
            notices.add(new Notice(NoticeKind.POOR_FIT, fit.relativeRms(), GOOD_FIT));
        }
        if (conditioned) {
            notices.add(new Notice(NoticeKind.EQUIVALENT_GEOMETRY, size(), 0));
        }
        return List.copyOf(notices);
    }

    private double size() {
        return equivalent instanceof CoaxSection coax
                ? coax.geometry().outerDiameterMetres()
                : ((PairSection) equivalent).geometry().insulationDiameterMetres();
    }
}
