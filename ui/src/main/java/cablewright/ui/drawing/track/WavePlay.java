// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.drawing.track;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.compile.CableProfile;
import cablewright.simulator.field.LineField;
import cablewright.simulator.field.LinePlaces;
import cablewright.simulator.field.WaveFrames;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.material.PhysicalConstants;
import java.util.List;

/**
 * The wave on its way along the cable, frame by frame, each place at the distance where the trace shows it. Since that
 * distance is time at the set velocity, the front moves evenly, and the port receives from half as far as the front has
 * come.
 */
public final class WavePlay {

    private static final int PLACES = 400;
    private static final int MOST_FRAMES = 720;
    private static final double AFTER_THE_END = 1.06;

    private final WaveFrames frames;
    private final double[] shownMetres;

    private WavePlay(WaveFrames frames, double[] shownMetres) {
        this.frames = frames;
        this.shownMetres = shownMetres;
    }

    /**
     * Works the wave out until the last first echo is back at the port.
     *
     * @param cable the cable, with distances from its near end
     * @param end the end that is tested
     * @param sourceOhms resistance of the instrument's source [Ω]
     * @param settings what is set
     * @return the wave
     */
    public static WavePlay of(Cable cable, LineEnd end, double sourceOhms, Settings settings) {
        Cable tested = cable.seenFrom(end);
        CableProfile profile = CableProfile.of(tested);
        LinePlaces line = LinePlaces.evenly(tested, PLACES).get(0);
        double oneWay = profile.secondsTo(tested.lengthMetres());
        double duration = 2 * oneWay * AFTER_THE_END + settings.stimulus().settledSeconds();
        int count = Math.min(MOST_FRAMES, WaveFrames.usualCount(settings.stimulus(), duration));
        WaveFrames frames =
                WaveFrames.of(new LineField(tested, sourceOhms, List.of(line)), settings.stimulus(), duration, count);
        double speed = settings.velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND;
        double[] shown = line.metres().stream()
                .mapToDouble(metres -> speed * profile.secondsTo(Math.max(0, metres)))
                .toArray();
        return new WavePlay(frames, shown);
    }

    /**
     * Returns how many frames there are.
     *
     * @return number of frames
     */
    public int frames() {
        return frames.count();
    }

    /**
     * Returns when a frame is.
     *
     * @param frame which, from 0
     * @return time since the wave began to leave [s]
     */
    public double seconds(int frame) {
        return frames.seconds(frame);
    }

    /**
     * Returns how many places there are along the line.
     *
     * @return number of places
     */
    public int places() {
        return shownMetres.length;
    }

    /**
     * Returns where the trace shows a place.
     *
     * @param place which, from 0
     * @return distance at the set velocity [m]
     */
    public double shownMetres(int place) {
        return shownMetres[place];
    }

    /**
     * Returns the voltage on the line.
     *
     * @param frame which frame, from 0
     * @param place which place, from 0
     * @return voltage for an outgoing wave of 1 V [V]
     */
    public double volts(int frame, int place) {
        return frames.volts(0, frame, place);
    }
}
