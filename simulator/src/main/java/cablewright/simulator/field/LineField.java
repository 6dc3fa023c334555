// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.field;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.circuit.PortResponse;
import cablewright.simulator.compile.CableCompiler;
import cablewright.simulator.compile.ProfileSteps;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.Frequencies;
import cablewright.simulator.solve.BlockWorkspace;
import cablewright.simulator.solve.ForwardWave;
import java.util.List;

/**
 * Voltage and current everywhere along a cable and its branches, for an outgoing wave of 1 V from a resistive source: from
 * the load backwards for the reflections, then forwards from the port with decaying exponentials only.
 *
 * <p>On a line, V(x) = a(e^(−γx) + Γ e^(−γl) e^(−γ(l−x))) and I(x) the difference of the two over Zc, with a the forward
 * wave at the line's start and Γ the reflection at its end. Beyond a full open or short both are zero.
 */
public final class LineField {

    private final Cable cable;
    private final double sourceOhms;
    private final List<LinePlaces> tracks;

    /**
     * Chooses places on a cable.
     *
     * @param cable the cable, seen from its near end
     * @param sourceOhms resistance of the source [Ω], 0.1 to 1e5
     * @param tracks the places
     * @throws IllegalArgumentException if a track names a branch that isn't there, or a place off the cable
     */
    public LineField(Cable cable, double sourceOhms, List<LinePlaces> tracks) {
        PortResponse.requireSource("sourceOhms", sourceOhms);
        this.cable = cable;
        this.sourceOhms = sourceOhms;
        this.tracks = List.copyOf(tracks);
        if (places() > LinePlaces.MOST_PLACES) {
            throw new IllegalArgumentException(
                    "tracks have " + places() + " places; at most " + LinePlaces.MOST_PLACES + " are allowed");
        }
        PlaceMap.of(cable, CableCompiler.compile(cable, ProfileSteps.forDrawing()), this.tracks);
    }

    public double sourceOhms() {
        return sourceOhms;
    }

    /**
     * Returns the chosen places.
     *
     * @return the tracks; places are numbered through them, track after track
     */
    public List<LinePlaces> tracks() {
        return tracks;
    }

    public int places() {
        return tracks.stream().mapToInt(track -> track.metres().size()).sum();
    }

    /**
     * Makes the circuit for a band.
     *
     * @param topHertz top of the band [Hz]; profiles are taken as for an edge of six half periods of it
     * @return what solves for the places at any list of frequencies up to there
     */
    public Solver upTo(double topHertz) {
        return new Solver(CableCompiler.compile(cable, ProfileSteps.forEdge(6 / topHertz)));
    }

    /** Solves for all places, a list of frequencies at a time; safe for use by several threads. */
    public final class Solver {

        private final Network network;
        private final PlaceMap map;

        private Solver(Network network) {
            this.network = network;
            this.map = PlaceMap.of(cable, network, tracks);
        }

        /**
         * Returns the places that are the port itself.
         *
         * @return their numbers
         */
        public List<Integer> atPort() {
            return List.copyOf(map.atPort());
        }

        /**
         * Solves at a list of frequencies.
         *
         * @param frequencies the frequencies
         * @return voltage and current at each place
         */
        public FieldValues at(Frequencies frequencies) {
            BlockWorkspace workspace = BlockWorkspace.of(frequencies);
            ForwardWave wave = ForwardWave.through(network, sourceOhms, workspace, map);
            wave.onto(sourceOhms);
            FieldValues values = new FieldValues(places(), workspace);
            for (int place : map.atPort()) {
                values.setPort(place, wave.reflection(), sourceOhms);
            }
            values.walk(wave, map, new ComplexBlock(frequencies.count()).fill(1));
            return values;
        }
    }
}
