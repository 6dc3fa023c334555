// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.material;

import java.util.List;

/** Published laws for the permittivity of pure water against temperature, without conduction. */
public enum WaterModel {
    /**
     * One relaxation. {@code es = 10^(1.94404 - 1.991e-3 t)}, {@code einf = 5.77 - 0.0274 t}, {@code tau = 3.745e-15 (1
     * + 7e-5 (t - 27.5)^2) exp(2295.7/T)}; 0 to 60 degrees Celsius, up to 60 GHz.
     *
     * <p>Source: U. Kaatze, J. Chem. Eng. Data 34 (1989) 371-374 (from memory).
     */
    KAATZE(0, 60) {
        @Override
        DebyeDielectric pure(double t) {
            double es = Math.pow(10, 1.94404 - 1.991e-3 * t);
            double einf = 5.77 - 2.74e-2 * t;
            double away = t - 27.5;
            double tau = 3.745e-15 * (1 + 7e-5 * away * away) * Math.exp(2295.7 / (t + KELVIN));
            return new DebyeDielectric(einf, List.of(new DebyePole(es - einf, tau)), 0);
        }
    },
    /**
     * Two relaxations. {@code TH = 300/T - 1}, {@code es = 77.66 + 103.3 TH}, {@code e1 = 0.0671 es},
     * {@code einf = 3.52 - 7.52 TH}, {@code f1 = 20.20 - 146.4 TH + 316 TH^2} GHz, {@code f2 = 39.8 f1}; -20 to 60
     * degrees Celsius, up to 1 THz.
     *
     * <p>Source: H. J. Liebe, G. A. Hufford, T. Manabe, Int. J. Infrared and Millimeter Waves 12 (1991) 659-675; the
     * pure-water form of Recommendation ITU-R P.527.
     */
    LIEBE(-20, 60) {
        @Override
        DebyeDielectric pure(double t) {
            double theta = 300 / (t + KELVIN) - 1;
            double es = 77.66 + 103.3 * theta;
            double e1 = 0.0671 * es;
            double einf = 3.52 - 7.52 * theta;
            double f1 = (20.20 - 146.4 * theta + 316 * theta * theta) * 1e9;
            return new DebyeDielectric(einf, List.of(pole(es - e1, f1), pole(e1 - einf, 39.8 * f1)), 0);
        }
    },
    /**
     * Two relaxations fitted to measurements from space as well. {@code es = (37088.6 - 82.168 t)/(421.854 + t)}; -20
     * to 40 degrees Celsius, up to 500 GHz.
     *
     * <p>Source: T. Meissner, F. J. Wentz, IEEE Trans. Geosci. Remote Sens. 42 (2004) 1836-1849 (from memory).
     */
    MEISSNER_WENTZ(-20, 40) {
        @Override
        DebyeDielectric pure(double t) {
            double es = (37088.6 - 82.168 * t) / (421.854 + t);
            double e1 = 5.7230 + t * (2.2379e-2 - t * 7.1237e-4);
            double f1 = (45 + t) / (5.0478 + t * (-7.0315e-2 + t * 6.0059e-4)) * 1e9;
            double einf = 3.6143 + 2.8841e-2 * t;
            double f2 = (45 + t) / (1.3652e-1 + t * (1.4825e-3 + t * 2.4166e-4)) * 1e9;
            return new DebyeDielectric(einf, List.of(pole(es - e1, f1), pole(e1 - einf, f2)), 0);
        }
    };

    private static final double KELVIN = 273.15;

    private final double lowestCelsius;
    private final double highestCelsius;

    WaterModel(double lowestCelsius, double highestCelsius) {
        this.lowestCelsius = lowestCelsius;
        this.highestCelsius = highestCelsius;
    }

    abstract DebyeDielectric pure(double celsius);

    private static DebyePole pole(double strength, double cornerHertz) {
        return new DebyePole(strength, 1 / (2 * Math.PI * cornerHertz));
    }

    /**
     * Lowest temperature the law was made for.
     *
     * @return degrees Celsius
     */
    public double lowestCelsius() {
        return lowestCelsius;
    }

    /**
     * Highest temperature the law was made for.
     *
     * @return degrees Celsius
     */
    public double highestCelsius() {
        return highestCelsius;
    }
}
