package cablewright.simulator.explanation;

import java.util.List;

/**
 * One extremum of a trace and the paths that make it.
 *
 * @param shownMetres where it is shown, at the set velocity [m]
 * @param volts its value, for an outgoing wave of 1 V [V]
 * @param shares the paths that make it, the largest first
 */
public record Bump(double shownMetres, double volts, List<Share> shares) {

    /** Copies the list. */
    public Bump {
        shares = List.copyOf(shares);
    }

    /**
     * What one path adds to a bump.
     *
     * @param path the path
     * @param volts what it adds, with its sign [V]
     */
    public record Share(WavePath path, double volts) {}
}
