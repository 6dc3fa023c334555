// SPDX-License-Identifier: Apache-2.0
/**
 * Everything that is drawn, drawn once: for the window, paper, picture files and demonstrations alike.
 *
 * <p>{@code pen} is what to draw with (PNG, SVG, PDF; {@code screen} adds a canvas), {@code palette} the colours of both themes,
 * {@code axis} the arithmetic of axes and the reduction of long curves. {@code section}, {@code track}, {@code figure} and
 * {@code lattice} each paint one thing with any pen; {@code text} draws with characters.
 *
 * <p><b>Why a pen of our own</b> and not {@code java.awt.Graphics2D} with adapters for canvas, SVG and PDF. The pen has six
 * methods and three file writers of about a hundred lines each; the adapters would be eleven more libraries of 2.2 MB, and letters by
 * way of AWT, which needs a font configured on the machine, where our pictures use the font that they bring along. On the
 * canvas neither is faster: a trace of 4,000 points, 1,100 pixels wide, in software rendering, mean processor time of 40
 * pictures less that of an empty one, on a clock of 10 ms (so ± 0.25 ms each):
 *
 * <table>
 * <caption>Milliseconds a picture, by the noise of the trace (3 times its RMS, in pixels)</caption>
 * <tr><th>drawn by</th><th>0</th><th>7</th><th>70</th></tr>
 * <tr><td>canvas polyline, all points</td><td>2.5</td><td>10.5</td><td>28.5</td></tr>
 * <tr><td>Graphics2D adapter, all points</td><td>1.5</td><td>11.3</td><td>29.0</td></tr>
 * <tr><td>Graphics2D adapter, reduced to minimum and maximum a column</td><td>&lt; 0.3</td><td>7.5</td><td>19.8</td></tr>
 * <tr><td>canvas polyline, reduced</td><td>&lt; 0.3</td><td>8.5</td><td>22.8</td></tr>
 * <tr><td>our pen: reduced, noise filled by columns of pixels</td><td>&lt; 0.3</td><td>1.0</td><td>2.0</td></tr>
 * </table>
 *
 * <p>What makes the difference is not the interface but what the rasteriser is asked for: the cost of a stroke grows with the
 * length of the line up and down, that of filled columns does not.
 */
package cablewright.ui.drawing;
