package cablewright.simulator.wave;

/** e^(a + jb) into an array of two; and a few products of such pairs. */
final class ComplexExp {

    private ComplexExp() {}

    static void exp(double re, double im, double[] out) {
        double size = Math.exp(re);
        out[0] = size * Math.cos(im);
        out[1] = size * Math.sin(im);
    }

    static void divide(double nRe, double nIm, double dRe, double dIm, double[] out) {
        double size = dRe * dRe + dIm * dIm;
        out[0] = (nRe * dRe + nIm * dIm) / size;
        out[1] = (nIm * dRe - nRe * dIm) / size;
    }
}
