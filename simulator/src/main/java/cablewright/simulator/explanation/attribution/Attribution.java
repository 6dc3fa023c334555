// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.explanation.attribution;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Which event caused each bump: the reflection, path by path. The wave passes, and turns round at, the scatterers of the line;
 * branches included; each path's part of the trace is the product of what it met, with loss and dispersion. On a lossless
 * line of resistive scatterers this is a lattice diagram.
 *
 * @param paths the paths that were found, in the order of their arrival
 * @param bumps the extrema of the trace after the outgoing pulse that stand above the noise, each with its paths
 * @param explainedEnergyShare share of the energy of what came back, after the outgoing pulse, which the sum of the paths
 *     accounts for: 1 − Σ(trace − sum)²/Σ trace²
 * @param worstErrorVolts largest difference between what came back and the sum of the paths [V]
 * @param leftOutVolts no path that was left out is much higher than this [V]
 */
public record Attribution(
        List<WavePath> paths,
        List<Bump> bumps,
        double explainedEnergyShare,
        double worstErrorVolts,
        double leftOutVolts) {

    /** Copies the lists. */
    public Attribution {
        paths = List.copyOf(paths);
        bumps = List.copyOf(bumps);
    }

    /**
     * Splits the reflection into paths.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param settings what is set on it
     * @param end the end that is tested
     * @return the attribution
     */
    public static Attribution of(Cable cable, Instrument instrument, Settings settings, LineEnd end) {
        return of(cable, instrument, settings, end, () -> false);
    }

    /**
     * Splits the reflection into paths.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param settings what is set on it
     * @param end the end that is tested
     * @param cancelled asked now and then; once true, the search ends with the paths found so far
     * @return the attribution
     */
    public static Attribution of(
            Cable cable, Instrument instrument, Settings settings, LineEnd end, BooleanSupplier cancelled) {
        return search(cable, instrument, settings, end, cancelled).attribution(Optional.empty());
    }

    /**
     * Splits the reflection into paths, and attributes the bumps of a measured trace.
     *
     * @param cable the cable, with distances from its near end
     * @param instrument the instrument
     * @param trace a trace of that cable, taken with that instrument from that end, with noise and all
     * @param end the end that is tested
     * @param cancelled asked now and then; once true, the search ends with the paths found so far
     * @return the attribution; its bumps are those of the trace, also such as no path explains
     * @throws IllegalArgumentException if the trace has another number of samples than the instrument takes at its settings
     */
    public static Attribution ofTrace(
            Cable cable, Instrument instrument, Trace trace, LineEnd end, BooleanSupplier cancelled) {
        return search(cable, instrument, trace.settings(), end, cancelled).attribution(Optional.of(trace));
    }

    private static PathSearch search(
            Cable cable, Instrument instrument, Settings settings, LineEnd end, BooleanSupplier cancelled) {
        Cable tested = cable.seenFrom(end);
        return new PathSearch(tested, instrument, settings, PathSearch.USUAL_MOST, cancelled);
    }

    /**
     * Returns the ghosts worth knowing.
     *
     * @param leastVolts least height [V]
     * @return ghosts at least so high, the highest first
     */
    public List<WavePath> ghosts(double leastVolts) {
        return paths.stream()
                .filter(path -> path.isGhost() && Math.abs(path.peakVolts()) >= leastVolts)
                .sorted(Comparator.comparingDouble(path -> -Math.abs(path.peakVolts())))
                .toList();
    }
}
