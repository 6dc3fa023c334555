// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.sitting;

import cablewright.lessons.exam.making.PaperFile;
import cablewright.lessons.exercise.Flag;
import cablewright.lessons.exercise.Verdict;
import cablewright.simulator.cable.EventKind;
import cablewright.simulator.cable.LineEnd;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Sits an exam and sets flags until it is killed. After each flag that is kept it says how many there are. */
public final class KilledSitting {

    private static final int MOST_FLAGS = 150;

    private KilledSitting() {}

    public static void main(String[] arguments) throws Exception {
        PaperFile paper = PaperFile.read(Path.of(arguments[0]));
        try (Sitting sitting =
                Sitting.open(paper, "Nobody", Path.of(arguments[1]), Clock.systemUTC(), System::nanoTime)) {
            String item = paper.paper().items().get(0).id();
            List<Flag> flags = new ArrayList<>(sitting.draft(item).flags());
            System.out.println("has " + flags.size());
            while (true) {
                if (flags.size() == MOST_FLAGS) {
                    flags.clear();
                }
                String letter = "" + (char) ('A' + flags.size() / 26) + (char) ('A' + flags.size() % 26);
                LineEnd end = paper.paper().items().get(0).start().end();
                flags.add(new Flag(
                        letter, end, flags.size(), OptionalDouble.empty(), EventKind.PINCH, Verdict.DAMAGE, 0.66));
                sitting.change(item, sitting.draft(item).withFlags(flags));
                System.out.println("kept " + flags.size());
            }
        }
    }
}
