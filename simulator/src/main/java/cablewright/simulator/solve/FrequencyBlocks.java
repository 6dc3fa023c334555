// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.solve;

import cablewright.simulator.circuit.Element;
import cablewright.simulator.circuit.Network;
import cablewright.simulator.kernel.ComplexArray;
import cablewright.simulator.kernel.ComplexBlock;
import cablewright.simulator.line.Frequencies;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;

/**
 * A list of frequencies in blocks that the processor's cores share. All work on a circuit is done on one block before the next,
 * so it stays in the first-level cache. Each frequency is computed alone, so the number of cores changes nothing in the result.
 * Safe for use by several threads.
 */
final class FrequencyBlocks {

    /** Longest list for which metals and plastics are remembered, 16 bytes a frequency for each of them. */
    private static final int MOST_REMEMBERED = 1 << 17;

    private final Frequencies frequencies;
    private final int count;
    private final AtomicReferenceArray<FrequencyBlock> blocks;
    private final LineNumbers numbers;
    private final Queue<BlockWorkspace> workspaces = new ConcurrentLinkedQueue<>();

    FrequencyBlocks(Frequencies frequencies) {
        this.frequencies = frequencies;
        this.count = frequencies.count();
        this.numbers = new LineNumbers(count);
        this.blocks = new AtomicReferenceArray<>((count + ComplexBlock.LENGTH - 1) / ComplexBlock.LENGTH);
    }

    ComplexArray reflection(Network network, double referenceOhms) {
        double[] re = new double[count];
        double[] im = new double[count];
        Map<Element.Line, Integer> remembered = count <= MOST_REMEMBERED ? numbers.of(network) : Map.of();
        int oldest = numbers.oldest();
        IntStream.range(0, blocks.length()).parallel().forEach(i -> {
            FrequencyBlock block = block(i);
            block.forgetBefore(oldest);
            BlockWorkspace workspace = workspaceFor(block).at(block, remembered);
            ReflectionSolver.solve(network, referenceOhms, workspace, re, im, i * ComplexBlock.LENGTH);
            if (workspace.count() == ComplexBlock.LENGTH) {
                workspaces.add(workspace);
            }
        });
        return ComplexArray.takingOver(re, im);
    }

    private FrequencyBlock block(int i) {
        FrequencyBlock known = blocks.get(i);
        if (known != null) {
            return known;
        }
        int from = i * ComplexBlock.LENGTH;
        FrequencyBlock made = new FrequencyBlock(frequencies.slice(from, Math.min(count, from + ComplexBlock.LENGTH)));
        if (count <= MOST_REMEMBERED) {
            blocks.set(i, made);
        }
        return made;
    }

    private BlockWorkspace workspaceFor(FrequencyBlock block) {
        BlockWorkspace free = block.count() == ComplexBlock.LENGTH ? workspaces.poll() : null;
        return free == null ? new BlockWorkspace(block.count()) : free;
    }
}
