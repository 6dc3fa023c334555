package cablewright.simulator.crosssection;

import cablewright.simulator.material.Conductor;
import cablewright.simulator.material.ConstantLossTangent;
import cablewright.simulator.material.PhysicalConstants;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Fits an equivalent cross-section to a data sheet: the size by impedance and velocity, skin effect and loss tangent by
 * least squares of the relative error of the attenuation (Levenberg and Marquardt, every number kept from
 * going below 0 by fitting its root; with three points or more also the DC resistance, if the sheet gives none). Model: two {@link FittedSurface} and a {@link ConstantLossTangent} dielectric, so causal.
 */
final class DataSheetFitter {

    private static final double DEFAULT_INSULATION_METRES = 4.5e-3;
    private static final double POLYETHYLENE = 2.3;
    private static final double ROOT_STEP = 1e-6;
    private static final int MOST_STEPS = 500;
    private static final int POINTS_FOR_RESISTANCE = 3;
    private static final double PULL = 0.003;

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
        startTangent = Math.max(1e-7, start[1] * PhysicalConstants.SPEED_OF_LIGHT * sheet.velocityFraction())
                / (Math.PI * PhysicalConstants.DECIBEL_PER_NEPER);
        insulation = sheet.insulationDiameterMetres().orElseGet(this::copperSize);
    }

    DatasheetSection fit() {
        int unknowns = fitsResistance() ? 3 : 2;
        double[] start = {1, Math.sqrt(startTangent), 1};
        int residuals = sheet.attenuation().size() + unknowns - 2;
        RealVector best = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(Arrays.copyOf(start, unknowns))
                        .model(model())
                        .target(new double[residuals])
                        .maxEvaluations(MOST_STEPS)
                        .maxIterations(MOST_STEPS)
                        .lazyEvaluation(false)
                        .build())
                .getPoint();
        CrossSection section = sectionOf(best.toArray());
        return new DatasheetSection(sheet, result(section, best.toArray()), section, false);
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

    private double loopResistance(double[] roots) {
        double radius = 0.5 * innerDiameter();
        double wire = new RoundWire(radius, Conductor.COPPER).dcResistanceOhmsPerMetre();
        double copper = sheet.layout() == ConductorLayout.COAX ? wire : 2 * wire;
        double growth = roots.length > 2 ? roots[2] * roots[2] : 1;
        return sheet.loopResistanceOhmsPerMetre().orElse(growth * copper);
    }

    private double skin(double[] roots) {
        return startSkin * roots[0] * roots[0];
    }

    private static double tangent(double[] roots) {
        return Math.min(0.999, roots[1] * roots[1]);
    }

    private CrossSection sectionOf(double[] roots) {
        ConstantLossTangent dielectric =
                new ConstantLossTangent(permittivity, tangent(roots), CrossSection.REFERENCE_FREQUENCY_HERTZ);
        double inner = innerDiameter();
        if (sheet.layout() == ConductorLayout.COAX) {
            double coreShare = insulation / (insulation + inner);
            FittedSurface core = share(coreShare, roots);
            return CoaxSection.of(core, inner, share(1 - coreShare, roots), insulation, dielectric);
        }
        PairGeometry geometry = new PairGeometry(inner, insulation, insulation, insulation, 1, 1);
        double half = 0.5 / geometry.crowding();
        FittedSurface wire =
                new FittedSurface(0.5 * loopResistance(roots), half * skin(roots), temperatureCoefficient());
        double solid = Math.max(POLYETHYLENE, permittivity * 1.000001);
        return new PairSection(wire, dielectric, solid, geometry, Surroundings.DRY);
    }

    private FittedSurface share(double part, double[] roots) {
        return new FittedSurface(part * loopResistance(roots), part * skin(roots), temperatureCoefficient());
    }

    private static double temperatureCoefficient() {
        return Conductor.COPPER.temperatureCoefficientPerKelvin();
    }

    private MultivariateJacobianFunction model() {
        return point -> {
            double[] roots = point.toArray();
            double[] here = errors(roots);
            RealMatrix slope = new Array2DRowRealMatrix(here.length, roots.length);
            for (int j = 0; j < roots.length; j++) {
                double[] moved = roots.clone();
                double step = ROOT_STEP * Math.max(Math.abs(roots[j]), 1e-3);
                moved[j] += step;
                double[] there = errors(moved);
                for (int i = 0; i < here.length; i++) {
                    slope.setEntry(i, j, (there[i] - here[i]) / step);
                }
            }
            return new Pair<>(new ArrayRealVector(here, false), slope);
        };
    }

    /** Relative errors; where the resistance is fitted too, a slight pull toward that of copper comes last. */
    private double[] errors(double[] roots) {
        CrossSection section = sectionOf(roots);
        List<AttenuationPoint> points = sheet.attenuation();
        double[] errors = new double[points.size() + roots.length - 2];
        for (int i = 0; i < points.size(); i++) {
            AttenuationPoint point = points.get(i);
            errors[i] = section.attenuationDecibelPerMetreAt(point.frequencyHertz()) / point.decibelPerMetre() - 1;
        }
        if (roots.length > 2) {
            errors[points.size()] = PULL * (roots[2] * roots[2] - 1);
        }
        return errors;
    }

    private DataSheetFit result(CrossSection section, double[] roots) {
        List<DataSheetFit.Point> points = new ArrayList<>();
        double sum = 0;
        for (AttenuationPoint point : sheet.attenuation()) {
            double fitted = section.attenuationDecibelPerMetreAt(point.frequencyHertz());
            DataSheetFit.Point pair = new DataSheetFit.Point(point.frequencyHertz(), point.decibelPerMetre(), fitted);
            points.add(pair);
            sum += pair.relativeResidual() * pair.relativeResidual();
        }
        return new DataSheetFit(
                loopResistance(roots),
                sheet.loopResistanceOhmsPerMetre().isPresent()
                        ? DataSheetFit.Resistance.GIVEN
                        : fitsResistance() ? DataSheetFit.Resistance.FITTED : DataSheetFit.Resistance.COPPER,
                skin(roots),
                tangent(roots),
                points,
                Math.sqrt(sum / points.size()));
    }
}
