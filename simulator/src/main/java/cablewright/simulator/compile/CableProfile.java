// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.compile;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.hardware.InlineComponent;
import cablewright.simulator.circuit.Element;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.material.PhysicalConstants;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A cable piece by piece as the wave meets it: which cross-section lies where, and how long the front of a wave takes to
 * get there.
 *
 * <p>Delays are those of the high-frequency velocity, by which the first of an edge travels; loss and dispersion make what
 * follows later, never earlier.
 */
public final class CableProfile {

    private final List<Piece> pieces;

    private CableProfile(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /**
     * A stretch of one cross-section, or a thing of no length on the cable's own measure that delays the wave.
     *
     * @param startMetres where it begins, from the near end [m]
     * @param endMetres where it ends [m]
     * @param section its cross-section
     * @param madeBy names of the events that made it
     * @param startSeconds time of the wave from the port to its start [s]
     * @param endSeconds time of the wave from the port to its end [s]
     */
    public record Piece(
            double startMetres,
            double endMetres,
            CrossSection section,
            Set<String> madeBy,
            double startSeconds,
            double endSeconds) {}

    /**
     * Takes a cable to pieces.
     *
     * @param cable the cable
     * @param topHertz highest frequency at which the steps of its profiles are to serve [Hz]
     * @return its pieces
     */
    public static CableProfile of(Cable cable, double topHertz) {
        return of(cable, ProfileSteps.forSweepTo(topHertz));
    }

    /**
     * Takes a cable to pieces as finely as a drawing and delays need.
     *
     * @param cable the cable
     * @return its pieces
     */
    public static CableProfile of(Cable cable) {
        return of(cable, ProfileSteps.forDrawing());
    }

    private static CableProfile of(Cable cable, ProfileSteps steps) {
        Set<String> things = new HashSet<>();
        things.add(CableCompiler.TEST_LEAD);
        cable.events().stream().filter(InlineComponent.class::isInstance).forEach(event -> things.add(event.id()));
        List<Piece> pieces = new ArrayList<>();
        double metres = 0;
        double seconds = 0;
        for (Element element : flat(CableCompiler.compile(cable, steps).elements())) {
            if (element instanceof Element.Line line) {
                boolean ofNoLength = line.madeBy().stream().anyMatch(things::contains);
                double end = ofNoLength ? metres : metres + line.lengthMetres();
                double later = seconds
                        + line.lengthMetres()
                                / (line.section().velocityFraction() * PhysicalConstants.LIGHT_METRES_PER_SECOND);
                pieces.add(new Piece(metres, end, line.section(), line.madeBy(), seconds, later));
                metres = end;
                seconds = later;
            }
        }
        return new CableProfile(pieces);
    }

    /** A split stretch is drawn with the impedance that it shows, which is that of neither mode. */
    private static Element shown(Element.Split split, Element inside) {
        if (!(inside instanceof Element.Line)) {
            return inside;
        }
        Element.Line line = (Element.Line) inside;
        return new Element.Line(split.shape().shown(line.section()), line.lengthMetres(), line.madeBy());
    }

    private static List<Element> flat(List<Element> elements) {
        List<Element> flat = new ArrayList<>();
        for (Element element : elements) {
            if (element instanceof Element.Split split) {
                split.inside().forEach(inside -> flat.add(shown(split, inside)));
            } else {
                flat.add(element);
            }
        }
        return flat;
    }

    public List<Piece> pieces() {
        return pieces;
    }

    /**
     * Returns how long the front of a wave takes from the port to a place.
     *
     * @param metres the place, from the near end [m]
     * @return time, one way [s], test lead included; at a thing that delays the wave, up to its start
     */
    public double secondsTo(double metres) {
        Piece last = pieces.get(pieces.size() - 1);
        for (Piece piece : pieces) {
            boolean within = metres <= piece.endMetres() && piece.endMetres() > piece.startMetres();
            if (within) {
                double share = (metres - piece.startMetres()) / (piece.endMetres() - piece.startMetres());
                return piece.startSeconds() + Math.max(0, share) * (piece.endSeconds() - piece.startSeconds());
            }
        }
        return last.endSeconds();
    }

    /**
     * Returns where the front of a wave is.
     *
     * @param seconds time since it left the port, one way [s]
     * @return place, from the near end [m]; the end of the cable once it is there
     */
    public double metresAt(double seconds) {
        for (Piece piece : pieces) {
            if (seconds < piece.endSeconds()) {
                double share = (seconds - piece.startSeconds()) / (piece.endSeconds() - piece.startSeconds());
                return piece.startMetres() + Math.max(0, share) * (piece.endMetres() - piece.startMetres());
            }
        }
        return pieces.get(pieces.size() - 1).endMetres();
    }
}
