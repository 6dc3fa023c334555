// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.crosssection;

import cablewright.simulator.crosssection.datasheet.AttenuationPoint;
import cablewright.simulator.crosssection.datasheet.ConductorLayout;
import cablewright.simulator.crosssection.datasheet.DataSheet;
import cablewright.simulator.crosssection.datasheet.DataSheetFit;
import cablewright.simulator.crosssection.surface.FittedSurface;
import cablewright.simulator.crosssection.surface.RoundWire;
import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.PhysicalConstants;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.exception.MathArithmeticException;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Fits an equivalent cross-section to a data sheet: the size by impedance and velocity; skin effect, loss tangent
 * and, if the sheet gives none but has three points or more, DC resistance by least squares of the relative error of
 * the attenuation (Levenberg and Marquardt). Each is kept from going below 0; one that ends there is set to 0 and the
 * others are fitted again. Model: {@link FittedSurface} and {@link ConstantLossTangent}, so causal.
 */
final class DataSheetFitter {

    private static final double DEFAULT_INSULATION_METRES = 4.5e-3;
    private static final double POLYETHYLENE = 2.3;
    private static final double STEP = 1e-5;
    private static final double GREATEST_TANGENT = 0.9;
    private static final int MOST_STEPS = 1000;
    private static final int POINTS_FOR_RESISTANCE = 3;
    /** Worst relative fit that is still a model of the cable (our choice); above 5 % a notice says that it is poor. */
    private static final double WORST_FIT = 0.5;

    private static final double PULL = 0.003;

    private static final int SKIN = 0;
    private static final int TANGENT = 1;
    private static final int RESISTANCE = 2;

    private final DataSheet sheet;
    private final double permittivity;
    private final double shape;
    private final double startSkin;
    private final double startTangent;
    private final double insulation;

    DataSheetFitter(DataSheet sheet) {
        this.sheet = sheet;
        permittivity = 1 / (sheet.velocityFraction() * sheet.velocityFraction());
        double natural = sheet.impedanceOhms() / sheet.velocityFraction() / PhysicalConstants.ETA_0;
        shape = natural * (sheet.layout() == ConductorLayout.COAX ? 2 * Math.PI : Math.PI);
        double[] start = rootAndLinear();
        startSkin = start[0] * 2 * sheet.impedanceOhms() / (Math.sqrt(Math.PI) * PhysicalConstants.DECIBEL_PER_NEPER);
        startTangent = Math.max(1e-7, start[1] * PhysicalConstants.LIGHT_METRES_PER_SECOND * sheet.velocityFraction())
                / (Math.PI * PhysicalConstants.DECIBEL_PER_NEPER);
        insulation = sheet.insulationDiameterMetres().orElseGet(this::copperSize);
    }

    /**
     * Fits.
     *
     * @throws IllegalArgumentException if no such section comes near the sheet's attenuation
     */
    FittedSection fit() {
        FittedSection section = best();
        double off = section.fit().relativeRms();
        if (!(off <= WORST_FIT)) {
            throw unmet("the best is off by " + String.format(Locale.ROOT, "%.3g", 100 * off)
                    + " % (root mean square); at most " + 100 * WORST_FIT + " % is allowed");
        }
        return section;
    }

    private static IllegalArgumentException unmet(String why) {
        return new IllegalArgumentException("attenuation fits no cable of this impedance and velocity: " + why
                + "; compare the figures and their units with the data sheet");
    }

    private FittedSection best() {
        double[] all = {1, startTangent, 1};
        int[] free = fitsResistance() ? new int[] {SKIN, TANGENT, RESISTANCE} : new int[] {SKIN, TANGENT};
        all = optimum(all, free);
        double[] found = all;
        int[] left = Arrays.stream(free).filter(i -> found[i] > 1e-9).toArray();
        if (left.length > 0 && left.length < free.length) {
            for (int i : free) {
                all[i] = all[i] > 1e-9 ? all[i] : 0;
            }
            all = optimum(all, left);
        }
        CrossSection section = sectionOf(all);
        return new FittedSection(sheet, result(section, all), section, false);
    }

    /** Best values of the free numbers, the others kept. */
    private double[] optimum(double[] all, int[] free) {
        double[] start = new double[free.length];
        for (int j = 0; j < free.length; j++) {
            start[j] = all[free[j]];
        }
        try {
            RealVector best = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-10)
                    .withParameterRelativeTolerance(1e-8)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .model(model(all, free))
                            .target(new double[errors(all).length])
                            .parameterValidator(DataSheetFitter::notNegative)
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .lazyEvaluation(false)
                            .build())
                    .getPoint();
            return with(all, free, best);
        } catch (MathIllegalStateException | MathIllegalArgumentException | MathArithmeticException e) {
            throw unmet("least squares find no best fit");
        }
    }

    private static RealVector notNegative(RealVector point) {
        return point.map(value -> Math.max(0, value));
    }

    private static double[] with(double[] all, int[] free, RealVector point) {
        double[] changed = all.clone();
        for (int j = 0; j < free.length; j++) {
            changed[free[j]] = point.getEntry(j);
        }
        return changed;
    }

    private boolean fitsResistance() {
        return sheet.loopResistanceOhmsPerMetre().isEmpty()
                && sheet.attenuation().size() >= POINTS_FOR_RESISTANCE;
    }

    /** Least squares of relative error with A sqrt(f) + B f, neither below 0: the start. */
    private double[] rootAndLinear() {
        double rr = 0;
        double rl = 0;
        double ll = 0;
        double r1 = 0;
        double l1 = 0;
        for (AttenuationPoint point : sheet.attenuation()) {
            double root = Math.sqrt(point.frequencyHertz()) / point.decibelPerMetre();
            double linear = point.frequencyHertz() / point.decibelPerMetre();
            rr += root * root;
            rl += root * linear;
            ll += linear * linear;
            r1 += root;
            l1 += linear;
        }
        double determinant = rr * ll - rl * rl;
        double a = (r1 * ll - l1 * rl) / determinant;
        double b = (l1 * rr - r1 * rl) / determinant;
        if (b < 0) {
            return new double[] {r1 / rr, 0};
        }
        return a < 0 ? new double[] {0.05 * r1 / rr, l1 / ll} : new double[] {a, b};
    }

    /** Size at which smooth copper conductors would have the skin effect of the start. */
    private double copperSize() {
        double copper = Math.sqrt(PhysicalConstants.MU_0 / Conductor.COPPER.conductivitySiemensPerMetre());
        boolean coax = sheet.layout() == ConductorLayout.COAX;
        double ratio = coax ? Math.exp(shape) : Math.cosh(shape);
        double perDiameter = coax ? copper / Math.PI * (1 + ratio) : 2 * copper / Math.PI * ratio / Math.tanh(shape);
        double size = perDiameter / startSkin;
        return size > 1e-4 && size < 0.3 ? size : DEFAULT_INSULATION_METRES;
    }

    private double innerDiameter() {
        return insulation / (sheet.layout() == ConductorLayout.COAX ? Math.exp(shape) : Math.cosh(shape));
    }

    private double loopResistance(double[] all) {
        double wire = new RoundWire(0.5 * innerDiameter(), Conductor.COPPER).dcResistanceOhmsPerMetre();
        double copper = sheet.layout() == ConductorLayout.COAX ? wire : 2 * wire;
        return sheet.loopResistanceOhmsPerMetre().orElse(all[RESISTANCE] * copper);
    }

    private double skin(double[] all) {
        return startSkin * all[SKIN];
    }

    private static double tangent(double[] all) {
        return Math.min(GREATEST_TANGENT, all[TANGENT]);
    }

    private CrossSection sectionOf(double[] all) {
        ConstantLossTangent dielectric =
                new ConstantLossTangent(permittivity, tangent(all), CrossSection.REFERENCE_FREQUENCY_HERTZ);
        double inner = innerDiameter();
        if (sheet.layout() == ConductorLayout.COAX) {
            double coreShare = insulation / (insulation + inner);
            FittedSurface core = share(coreShare, all);
            return CoaxSection.of(core, inner, share(1 - coreShare, all), insulation, dielectric);
        }
        PairGeometry geometry = new PairGeometry(inner, insulation, insulation, insulation, 1, 1, Optional.empty());
        double half = 0.5 / geometry.crowding();
        FittedSurface wire = new FittedSurface(0.5 * loopResistance(all), half * skin(all), temperatureCoefficient());
        double solid = Math.max(POLYETHYLENE, permittivity * 1.000001);
        return new PairSection(wire, dielectric, solid, geometry, WetSurroundings.DRY);
    }

    private FittedSurface share(double part, double[] all) {
        return new FittedSurface(part * loopResistance(all), part * skin(all), temperatureCoefficient());
    }

    private static double temperatureCoefficient() {
        return Conductor.COPPER.temperatureCoefficientPerKelvin();
    }

    private MultivariateJacobianFunction model(double[] all, int[] free) {
        double[] scale = {1, startTangent + 1e-4, 1};
        return point -> {
            double[] at = with(all, free, point);
            double[] here = errors(at);
            RealMatrix slope = new Array2DRowRealMatrix(here.length, free.length);
            for (int j = 0; j < free.length; j++) {
                double[] moved = at.clone();
                double step = STEP * scale[free[j]];
                moved[free[j]] += step;
                double[] there = errors(moved);
                for (int i = 0; i < here.length; i++) {
                    slope.setEntry(i, j, (there[i] - here[i]) / step);
                }
            }
            return new Pair<>(new ArrayRealVector(here, false), slope);
        };
    }

    /** Relative errors; where the resistance is fitted too, a slight pull toward that of copper comes last. */
    private double[] errors(double[] all) {
        CrossSection section = sectionOf(all);
        List<AttenuationPoint> points = sheet.attenuation();
        double[] errors = new double[points.size() + (fitsResistance() ? 1 : 0)];
        for (int i = 0; i < points.size(); i++) {
            AttenuationPoint point = points.get(i);
            errors[i] = section.attenuationDecibelPerMetreAt(point.frequencyHertz()) / point.decibelPerMetre() - 1;
        }
        if (fitsResistance()) {
            errors[points.size()] = PULL * (all[RESISTANCE] - 1) / (all[RESISTANCE] + 1);
        }
        return errors;
    }

    private DataSheetFit result(CrossSection section, double[] all) {
        List<DataSheetFit.Point> points = new ArrayList<>();
        double sum = 0;
        for (AttenuationPoint point : sheet.attenuation()) {
            double fitted = section.attenuationDecibelPerMetreAt(point.frequencyHertz());
            DataSheetFit.Point pair = new DataSheetFit.Point(point.frequencyHertz(), point.decibelPerMetre(), fitted);
            points.add(pair);
            sum += pair.relativeResidual() * pair.relativeResidual();
        }
        return new DataSheetFit(
                loopResistance(all),
                sheet.loopResistanceOhmsPerMetre().isPresent()
                        ? DataSheetFit.Resistance.GIVEN
                        : fitsResistance() ? DataSheetFit.Resistance.FITTED : DataSheetFit.Resistance.COPPER,
                skin(all),
                tangent(all),
                points,
                Math.sqrt(sum / points.size()));
    }
}
