// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.demonstrations;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cablewright.lessons.text.Texts;
import cablewright.ui.drawing.figure.Figure;
import cablewright.ui.drawing.figure.FigureData;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DemonstrationsTest {

    static List<Demonstration> all() {
        return Demonstrations.all();
    }

    private static Figure figure(Demonstration demonstration, Values values) {
        return demonstration
                .figure(values, Words.in(LengthUnit.METRES, Locale.ROOT), ProgressListener.none())
                .orElseThrow();
    }

    private static Figure first(String id) {
        Demonstration found = all().stream()
                .filter(demonstration -> demonstration.id().equals(id))
                .findFirst()
                .orElseThrow();
        return figure(found, Values.initial(found.controls()));
    }

    @Test
    void thereAreTen() {
        assertEquals(10, all().size());
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyControlCanBeSetToBothEndsAlone(Demonstration demonstration) {
        Values initial = Values.initial(demonstration.controls());
        for (Control control : demonstration.controls()) {
            for (double value : new double[] {control.least(), control.most()}) {
                Figure figure = figure(demonstration, initial.with(control.id(), value));
                assertFalse(figure.caption().isBlank());
                assertTrue(figure.caption().chars().noneMatch(c -> c == '{'), figure.caption());
                assertFalse(figure.caption().contains("NaN"), control.id() + ": " + figure.caption());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void dataBesideTheFigureHasFiveColumnsThroughout(Demonstration demonstration) {
        String csv = FigureData.csv(figure(demonstration, Values.initial(demonstration.controls())));
        Stream<String> rows = csv.lines().filter(line -> !line.startsWith("#"));
        assertTrue(rows.allMatch(row -> row.replaceAll("\"[^\"]*\"", "").split(",", -1).length == 5));
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyWordIsThereAndTheRightAnswerIsOneOfThem(Demonstration demonstration) {
        Texts texts = new Texts(Demonstrations.BUNDLE, Locale.ROOT);
        TreeSet<String> keys = new TreeSet<>(texts.keys());
        String id = demonstration.id();
        assertTrue(keys.containsAll(List.of(id + ".title", id + ".question", id + ".because")));
        assertTrue(demonstration.rightAnswer() < demonstration.answers());
        for (int i = 0; i < demonstration.answers(); i++) {
            assertTrue(keys.contains(id + ".answer." + i));
        }
        assertFalse(keys.contains(id + ".answer." + demonstration.answers()));
        assertTrue(demonstration.rightReason() < Demonstration.REASONS);
        for (int i = 0; i < Demonstration.REASONS; i++) {
            assertTrue(keys.contains(id + ".reason." + i));
        }
        for (Control control : demonstration.controls()) {
            assertTrue(keys.contains(id + ".control." + control.id()), control.id());
        }
    }

    /** physics.md §2: e = 0.5 makes 75 Ω into 66.2 Ω, ρ = −6.22 %; hardline is 75 Ω at another diameter ratio: −6.3 %. */
    @Test
    void offCentreCaptionTellsTheLaunchStep() {
        assertTrue(first("same").caption().contains("66.2\u00a0Ω instead of 75.0\u00a0Ω"));
        assertTrue(first("same").caption().contains("launch is −6."));
    }

    /** physics.md §14. */
    @Test
    void velocityCaptionTellsTheHoleThatIsThreeAndAHalfMetresShort() {
        assertTrue(first("velocity").caption().contains("shows at 96.5\u00a0m: the hole is 3.5\u00a0m short"));
    }

    /** physics.md §13. */
    @Test
    void everyMetreCaptionTellsTheSpike() {
        assertTrue(first("every").caption().contains("127.4\u00a0MHz"));
    }

    @Test
    void lookingAtAnotherPlaceOfTheSameMapNeedsNoOtherMap() {
        DamageByDegrees damage = new DamageByDegrees();
        Values values = Values.initial(damage.controls());
        figure(damage, values);
        ProgressListener deaf = new ProgressListener() {
            @Override
            public void progress(double share) {
                throw new AssertionError("the map is computed again");
            }

            @Override
            public void preview(Figure figure) {
                throw new AssertionError("the map is computed again");
            }

            @Override
            public boolean isCancelled() {
                return false;
            }
        };
        Values clicked = damage.clicked(0, 0.9, 0.2, values);
        Optional<Figure> second = damage.figure(clicked, Words.in(LengthUnit.METRES, Locale.ROOT), deaf);
        assertTrue(
                second.orElseThrow().caption().contains("179.7\u00a0m"),
                second.get().caption());
    }
}
