// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.axis;

/**
 * The vertical axis of a trace: reflection in shares of the outgoing wave against pixels that count downward.
 *
 * @param centreShare the share in the middle
 * @param halfSpanShare share from the middle to the top edge, above 0
 * @param topPixels where the top edge is
 * @param heightPixels pixels from edge to edge, above 0
 */
public record PercentScale(double centreShare, double halfSpanShare, double topPixels, double heightPixels) {

    /** A little air above the level at which the converter clips, so that clipping is seen as clipping. */
    private static final double AIR = 1.08;

    /** Refuses an axis of no length. */
    public PercentScale {
        if (!(halfSpanShare > 0) || !(heightPixels > 0)) {
            throw new IllegalArgumentException("a scale of " + halfSpanShare + " on " + heightPixels
                    + " pixels has no length; both must be above 0");
        }
    }

    /**
     * Makes the scale that shows all a converter can tell.
     *
     * @param clipShare level at which it clips, in shares of the outgoing wave
     * @param top where the top edge is
     * @param height pixels from edge to edge
     * @return the scale
     */
    public static PercentScale ofClipLevel(double clipShare, double top, double height) {
        return new PercentScale(0, AIR * clipShare, top, height);
    }

    /**
     * Returns where a reflection is drawn.
     *
     * @param share reflection in shares of the outgoing wave
     * @return pixel, counted downward
     */
    public double pixel(double share) {
        return topPixels + heightPixels * (centreShare + halfSpanShare - share) / (2 * halfSpanShare);
    }

    /**
     * Returns which reflection is drawn at a pixel.
     *
     * @param pixel the pixel
     * @return share of the outgoing wave
     */
    public double share(double pixel) {
        return centreShare + halfSpanShare - 2 * halfSpanShare * (pixel - topPixels) / heightPixels;
    }
}
