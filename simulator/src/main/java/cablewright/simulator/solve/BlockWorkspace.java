// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.crosssection.CrossSection;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.kernel.Exponential;
import cablewright.simulator.line.Frequencies;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;

/**
 * Workspace in which one thread solves a block of frequencies: waves on the lines last met, and blank blocks to write on. All
 * of it is used again for the next line and the next block of frequencies, so nothing grows with the number of lines.
 */
public final class BlockWorkspace {

    /** Waves kept at once: enough for the few types of a cable, few enough for the cache. */
    private static final int MOST = 4;

    private final int count;
    private final Exponential exponential;
    private final LineWave.Scratch scratch;
    private final List<LineWave> waves = new ArrayList<>();
    private final Deque<ComplexBlock> blank = new ArrayDeque<>();
    private FrequencyBlock block;
    private Map<Element.Line, Integer> remembered = Map.of();

    BlockWorkspace(int count) {
        this.count = count;
        this.exponential = new Exponential(count);
        this.scratch = new LineWave.Scratch(count);
    }

    /**
     * Makes a workspace for a list of frequencies.
     *
     * @param frequencies the frequencies
     * @return the workspace
     */
    public static BlockWorkspace of(Frequencies frequencies) {
        return new BlockWorkspace(frequencies.count()).at(new FrequencyBlock(frequencies));
    }

    /** Goes on to other frequencies, as many. */
    BlockWorkspace at(FrequencyBlock other) {
        return at(other, Map.of());
    }

    /** Goes on to other frequencies, as many, and to a circuit of which some lines are remembered by numbers. */
    BlockWorkspace at(FrequencyBlock other, Map<Element.Line, Integer> numbers) {
        block = other;
        remembered = numbers;
        waves.forEach(LineWave::forget);
        return this;
    }

    public int count() {
        return count;
    }

    /** The frequencies themselves [rad/s]; only to be read. */
    public ComplexBlock s() {
        return block.s();
    }

    /**
     * Returns the wave on a line.
     *
     * @param section the line's cross-section; the same object finds its wave again
     * @return the wave; good until {@value #MOST} other lines have been asked for
     */
    public LineWave wave(CrossSection section) {
        for (int i = 0; i < waves.size(); i++) {
            LineWave known = waves.get(i);
            if (known.section() == section) {
                bringToFront(i, known);
                return known;
            }
        }
        int last = waves.size() - 1;
        LineWave wave = last + 1 < MOST ? new LineWave(scratch, exponential) : waves.remove(last);
        waves.add(0, wave);
        wave.compute(section, block.samples());
        return wave;
    }

    /** Returns what the reflection needs of a line; good until another line is asked for. */
    LineTrip trip(Element.Line line) {
        Integer number = remembered.get(line);
        LineTrip known = number == null ? null : block.trip(number);
        if (known != null) {
            return known;
        }
        LineWave wave = wave(line.section());
        LineTrip trip = new LineTrip(wave.impedance(), wave.roundTrip(line.lengthMetres()));
        if (number != null) {
            block.remember(number, trip);
        }
        return trip;
    }

    private void bringToFront(int place, LineWave known) {
        if (place > 0) {
            waves.remove(place);
            waves.add(0, known);
        }
    }

    /** Returns the wave on a line in arrays of its own, good for ever. */
    LineWave ownWave(CrossSection section) {
        LineWave wave = new LineWave(scratch, exponential);
        wave.compute(section, block.samples());
        return wave;
    }

    /** Returns a block to write on; what is in it is anything. */
    ComplexBlock take() {
        return blank.isEmpty() ? new ComplexBlock(count) : blank.pop();
    }

    /** Takes blocks back that are no longer needed. */
    void give(ComplexBlock... used) {
        for (ComplexBlock one : used) {
            blank.push(one);
        }
    }
}
