// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.bench.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.lessons.bench.BenchDocument;
import cablewright.lessons.bench.BenchTemplate;
import cablewright.lessons.exercise.LessonPage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LessonEditsTest {

    private static LessonPage page(String id, int before) {
        return new LessonPage(id, before, "Title", "Text", List.of(), Optional.empty());
    }

    private static BenchDocument document(LessonPage... pages) {
        BenchDocument street = BenchTemplate.STREET_OF_TAPS.document(Locale.ROOT);
        return street.adding(BenchTemplate.BUILDING_RISER.document(Locale.ROOT).exercise())
                .withPages(none -> List.of(pages));
    }

    private static List<String> places(BenchDocument document) {
        return document.lesson().pages().stream()
                .map(page -> page.id() + page.exercisesBefore())
                .toList();
    }

    private static BenchDocument moved(BenchDocument document, int index, int by) {
        return document.withPages(pages -> LessonEdits.movedBy(document.lesson(), index, by));
    }

    @Test
    void aPageIsMovedPastPagesAndExercises() {
        BenchDocument document = document(page("a", 0), page("b", 0), page("c", 2));
        assertEquals(List.of("b0", "a0", "c2"), places(moved(document, 0, 1)));
        assertEquals(List.of("a0", "b1", "c2"), places(moved(document, 1, 1)));
        assertEquals(List.of("a0", "b0", "c1"), places(moved(document, 2, -1)));
        assertEquals(places(document), places(moved(document, 0, -1)), "before the start there is nothing");
        assertEquals(places(document), places(moved(document, 2, 1)), "nor behind the end");
    }

    @Test
    void pagesKeepTheirPlaceAmongTheExercises() {
        BenchDocument document = document(page("a", 1), page("b", 2)).selecting(0);
        BenchDocument longer = document.adding(document.exercise());
        assertEquals(List.of("a2", "b3"), places(longer));
        assertEquals(List.of("a1", "b2"), places(longer.withoutExercise()));
        assertEquals(List.of("a1", "b2"), places(document.movedBy(1)));
    }

    @Test
    void aPageGetsANameOfItsOwn() {
        BenchDocument document = document(page("a", 1));
        List<LessonPage> more = LessonEdits.with(document.lesson(), page("a", 0));
        assertEquals(List.of("a-2", "a"), more.stream().map(LessonPage::id).toList());
        assertEquals(
                "net-loft-street-2",
                LessonEdits.with(document.lesson(), page("net-loft-street", 0))
                        .get(0)
                        .id());
    }
}
