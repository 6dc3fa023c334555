package cablewright.simulator.explanation;

import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.LineEnd;
import cablewright.simulator.cable.Run;
import cablewright.simulator.instrument.Instrument;
import cablewright.simulator.instrument.Reflectometer;
import cablewright.simulator.instrument.Settings;
import cablewright.simulator.instrument.Trace;
import cablewright.simulator.network.CableProfile;
import cablewright.simulator.network.SimulatedPort;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Seeks the ghosts worth knowing: a wave that goes out to a place i, back to a nearer place k (or to the port), out again to
 * j, and home.
 *
 * <p>It comes back at t(i) + t(j) − t(k) and is about h(i) h(j) h(k)/(F(k) F⁺(k)) high, twice that where i and j differ,
 * since the wave can take the path either way. Here t is the time there and back, h the height of an event on the trace, F
 * that of a full reflection at its place ({@link FullEcho}) and F⁺ that of one just behind it: h/F is the reflection
 * coefficient of k, and h(i) h(j)/F⁺(k) what loss and the events on the way leave of the wave. At the port the coefficient
 * is the source's, ρ = (R − Z)/(R + Z), and F⁺ is 1 − ρ². The sign is not told: it depends on whether k looks the same from
 * behind. First principles; exact on a line without loss.
 */
public final class Ghosts {

    /** The instrument, where its source does not match the line. */
    public static final String PORT = "port";

    private static final int MOST_REFLECTORS = 24;
    private static final double SAME_PLACE_METRES = 1e-6;

    private final Cable cable;
    private final Instrument instrument;
    private final Settings settings;
    private final LineEnd end;
    private final FullEcho echo;

    private Ghosts(Cable cable, Instrument instrument, Settings settings, LineEnd end) {
        this.cable = cable;
        this.instrument = instrument;
        this.settings = settings;
        this.end = end;
        this.echo = new FullEcho(instrument, settings);
    }

    /** A place that reflects; what it turns back from behind is {@code turned} of h(i) h(j). */
    private record Reflector(String name, double seconds, double heightVolts, double turned) {}

    /**
     * Looks for ghosts.
     *
     * @param cable the cable as it lies, told from its near end
     * @param instrument the instrument
     * @param settings what is set on it
     * @param end the end that is tested
     * @param sights how the events show at these settings
     * @return ghosts within the range that stand as high above noise and converter as a marginal event must, highest first
     */
    public static List<Ghost> of(
            Cable cable, Instrument instrument, Settings settings, LineEnd end, List<EventSight> sights) {
        return new Ghosts(cable, instrument, settings, end).search(sights);
    }

    private List<Ghost> search(List<EventSight> sights) {
        List<Reflector> reflectors = reflectors(sights);
        List<Reflector> turns = new ArrayList<>(reflectors);
        double port = portMismatch();
        turns.add(new Reflector(PORT, 0, port, port / (1 - port * port)));
        List<Ghost> ghosts = new ArrayList<>();
        for (int i = 0; i < reflectors.size(); i++) {
            for (int j = i; j < reflectors.size(); j++) {
                for (Reflector turn : turns) {
                    add(reflectors.get(i), turn, reflectors.get(j), ghosts);
                }
            }
        }
        ghosts.sort(Comparator.comparingDouble((Ghost ghost) -> -ghost.heightVolts())
                .thenComparing(ghost -> ghost.path().toString()));
        return ghosts;
    }

    private void add(Reflector first, Reflector turn, Reflector second, List<Ghost> ghosts) {
        if (turn.seconds() >= Math.min(first.seconds(), second.seconds())) {
            return;
        }
        double ways = first.equals(second) ? 1 : 2;
        double height = ways * Math.abs(first.heightVolts() * second.heightVolts() * turn.turned());
        double seconds = first.seconds() + second.seconds() - turn.seconds();
        double shown = settings.metresThereAndBack(seconds);
        if (height >= leastVolts() && shown <= settings.rangeMetres()) {
            ghosts.add(new Ghost(List.of(first.name(), turn.name(), second.name()), seconds, shown, height));
        }
    }

    private double leastVolts() {
        double noise = VisibilityRules.MARGINAL_OVER_NOISE * instrument.noiseVoltsAfter(settings.averages());
        return Math.max(noise, instrument.stepVoltsAfter(settings.gainDecibels(), settings.averages()));
    }

    private double portMismatch() {
        double line = tested().runs().get(0).type().section().impedanceOhms();
        return (instrument.sourceOhms() - line) / (instrument.sourceOhms() + line);
    }

    private Cable tested() {
        return end == LineEnd.NEAR ? cable : cable.seenFromFarEnd();
    }

    private List<Reflector> reflectors(List<EventSight> sights) {
        List<Reflector> all = new ArrayList<>();
        for (EventSight sight : sights) {
            for (PlaceSight place : sight.places()) {
                add(all, sight.eventId(), place.thereAndBackSeconds(), place.expectedVolts(), place.trueMetres());
            }
        }
        addEndOfLine(all);
        all.sort(Comparator.comparingDouble((Reflector one) -> -Math.abs(one.heightVolts()))
                .thenComparing(Reflector::name));
        return all.subList(0, Math.min(MOST_REFLECTORS, all.size()));
    }

    private void add(List<Reflector> all, String name, double seconds, double height, double metres) {
        double behind = behind(metres);
        OptionalDouble full = echo.volts(cable, end, metres);
        OptionalDouble fullBehind = echo.volts(cable, end, behind);
        if (height != 0 && full.isPresent() && full.getAsDouble() > 0) {
            boolean passes = fullBehind.isPresent() && fullBehind.getAsDouble() > 0;
            double turned = passes ? height / (full.getAsDouble() * fullBehind.getAsDouble()) : 0;
            all.add(new Reflector(name, seconds, height, turned));
        }
    }

    /**
     * Just behind a place: as far as a full reflection must be for the pulse not to run to and fro between the two, but not
     * beyond what comes next.
     */
    private double behind(double metres) {
        double pulse =
                settings.metresThereAndBack(settings.stimulus().settledSeconds() + 1 / instrument.bandwidthHertz());
        double sign = end == LineEnd.NEAR ? 1 : -1;
        double room = end == LineEnd.NEAR ? cable.lengthMetres() - metres : metres;
        for (Event event : cable.events()) {
            for (double other : new double[] {event.startMetres(), event.endMetres()}) {
                double apart = sign * (other - metres);
                room = apart > SAME_PLACE_METRES ? Math.min(room, apart) : room;
            }
        }
        return metres + sign * Math.min(pulse, room);
    }

    /** The end's height is what changes on the trace when the cable goes on without end instead. */
    private void addEndOfLine(List<Reflector> all) {
        Cable tested = tested();
        Run last = tested.runs().get(tested.runs().size() - 1);
        Cable goingOn = new Cable(
                tested.title(),
                tested.runs(),
                tested.events(),
                new FarEnd.Endless(last.type()),
                tested.celsius(),
                tested.testLead());
        double arrival = 2
                * CableProfile.of(tested, 1 / settings.stimulus().shortestEdgeSeconds())
                        .secondsTo(tested.lengthMetres());
        Trace with = trace(tested);
        Trace without = trace(goingOn);
        double settled = settings.stimulus().settledSeconds() + 1 / instrument.bandwidthHertz();
        double height = 0;
        for (int i = 0; i < with.count(); i++) {
            double time = with.seconds(i) + with.zeroSeconds();
            if (time >= arrival && time <= arrival + settled) {
                height = Math.max(height, Math.abs(with.volts(i) - without.volts(i)));
            }
        }
        add(all, Sightings.END_OF_LINE, arrival, height, end == LineEnd.NEAR ? cable.lengthMetres() : 0);
    }

    private Trace trace(Cable other) {
        return new Reflectometer(instrument).withoutNoise(new SimulatedPort(other, instrument.sourceOhms()), settings);
    }
}
