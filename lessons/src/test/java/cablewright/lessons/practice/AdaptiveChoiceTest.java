// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.practice.ItemBank.Item;
import cablewright.lessons.practice.ItemBank.Task;
import cablewright.simulator.cable.EventKind;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class AdaptiveChoiceTest {

    private static final EventKind[] KINDS = {EventKind.PINCH, EventKind.WATER, EventKind.SPLICE, EventKind.TAP};
    private static final Task PINCH = new Task(EventKind.PINCH, 0.5);
    private static final double AIM = 0.75;

    private static ItemBank bank() {
        List<Item> items = new ArrayList<>();
        for (EventKind kind : KINDS) {
            for (int i = 0; i < 40; i++) {
                items.add(new Item(new Task(kind, i / 40.0), new Rating(-4 + 0.2 * i, 50)));
            }
        }
        return ItemBank.of(items);
    }

    /** A trainee who answers by the model itself. */
    private record Simulated(double[] abilities, SplittableRandom random) {
        double answer(Item item) {
            int kind = List.of(KINDS).indexOf(item.kind());
            double chance = Elo.chance(abilities[kind], item.difficulty().logits());
            return random.nextDouble() < chance ? 1 : 0;
        }
    }

    private static Simulated trainee(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] abilities = new double[KINDS.length];
        for (int i = 0; i < abilities.length; i++) {
            abilities[i] = Math.max(-2, Math.min(2, random.nextGaussian()));
        }
        return new Simulated(abilities, random);
    }

    private static double error(TraineeModel known, Simulated trainee) {
        double sum = 0;
        for (int i = 0; i < KINDS.length; i++) {
            sum += Math.pow(known.ability(KINDS[i]).logits() - trainee.abilities()[i], 2);
        }
        return sum / KINDS.length;
    }

    private TraineeModel practise(Simulated trainee, int answers, boolean adaptive) {
        ItemBank bank = bank();
        TraineeModel known = TraineeModel.unknown();
        Deque<Task> recent = new ArrayDeque<>();
        SplittableRandom order = new SplittableRandom(99);
        List<Item> all = new ArrayList<>(bank.items().values());
        for (int n = 0; n < answers; n++) {
            EventKind kind = KINDS[n % KINDS.length];
            ItemBank ofKind =
                    ItemBank.of(all.stream().filter(item -> item.kind() == kind).toList());
            Item item = adaptive
                    ? ofKind.next(known, AIM, new HashSet<>(recent)).orElseThrow()
                    : all.get(order.nextInt(all.size()));
            recent.addLast(item.task());
            if (recent.size() > 12) {
                recent.removeFirst();
            }
            known = known.after(item.kind(), item.difficulty().logits(), trainee.answer(item));
        }
        return known;
    }

    /** Over 200 simulated trainees: after 50 answers of each kind the root-mean-square error is below 0.55 logits. */
    @Test
    void recoversKnownAbilities() {
        double sum = 0;
        for (int seed = 0; seed < 200; seed++) {
            Simulated trainee = trainee(seed);
            sum += error(practise(trainee, 200, true), trainee);
        }
        double rms = Math.sqrt(sum / 200);
        assertTrue(rms < 0.55, "root-mean-square error " + rms + " logits");
    }

    @Test
    void adaptiveOrderKnowsMoreThanRandomOrderAfterAsManyAnswers() {
        double adaptive = 0;
        double random = 0;
        for (int seed = 0; seed < 200; seed++) {
            adaptive += error(practise(trainee(seed), 80, true), trainee(seed));
            random += error(practise(trainee(seed), 80, false), trainee(seed));
        }
        assertTrue(adaptive < 0.9 * random, adaptive + " against " + random);
    }

    @Test
    void aboutThreeQuartersOfTheAnswersAreRight() {
        double right = 0;
        int asked = 0;
        for (int seed = 0; seed < 100; seed++) {
            Simulated trainee = trainee(seed);
            ItemBank bank = bank();
            TraineeModel known = TraineeModel.unknown();
            Deque<Task> recent = new ArrayDeque<>();
            for (int n = 0; n < 160; n++) {
                Item item = bank.next(known, AIM, new HashSet<>(recent)).orElseThrow();
                recent.addLast(item.task());
                if (recent.size() > 12) {
                    recent.removeFirst();
                }
                double answer = trainee.answer(item);
                known = known.after(item.kind(), item.difficulty().logits(), answer);
                if (n >= 40) {
                    right += answer;
                    asked++;
                }
            }
        }
        assertEquals(AIM, right / asked, 0.05);
    }

    @Test
    void difficultyOfAnItemIsLearntFromThoseWhoAnswerIt() {
        ItemBank bank = ItemBank.of(List.of(new Item(PINCH, Rating.UNKNOWN)));
        SplittableRandom random = new SplittableRandom(5);
        for (int n = 0; n < 2000; n++) {
            double ability = random.nextGaussian();
            double success = random.nextDouble() < Elo.chance(ability, 1.2) ? 1 : 0;
            bank = bank.after(PINCH, ability, success);
        }
        assertEquals(1.2, bank.items().get(PINCH).difficulty().logits(), 0.35);
    }

    @Test
    void chanceAndDifficultyAreEachOthersInverse() {
        assertEquals(0.75, Elo.chance(0.4, Elo.difficultyFor(0.4, 0.75)), 1e-12);
        assertEquals(0.5, Elo.chance(1, 1), 0);
    }

    @Test
    void mistakeComesBackAfterOneTwoFourEightAndSixteenDaysUntilItIsDone() {
        Instant now = Instant.parse("2031-03-01T08:00:00Z");
        ReviewBox box = ReviewBox.ofMistake(now);
        assertFalse(box.isDue(now));
        for (int days : new int[] {1, 2, 4, 8, 16}) {
            now = now.plusSeconds(86_400L * days);
            assertTrue(box.isDue(now));
            assertFalse(box.isDue(now.minusSeconds(1)));
            box = box.after(true, now);
        }
        assertTrue(box.done());
        assertEquals(1, box.after(false, now).box());
    }
}
